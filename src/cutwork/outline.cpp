// Goes round an opening with the opening on the right hand.
#include <algorithm>
#include <set>
#include <utility>

#include "cutwork/pieces.h"

namespace cutwork {
namespace {

using Edges = std::set<std::pair<cloth::Hole, cloth::Hole>>;  // one thread long each, the opening on the right

/// An edge that two boxes share is no edge of the opening.
void add(Edges& edges, cloth::Hole a, cloth::Hole b) {
  if (edges.erase({b, a}) == 0) edges.insert({a, b});
}

Edges edges_of(const std::vector<cloth::Box>& boxes) {
  Edges edges;
  for (const cloth::Box& box : boxes) {
    for (int x = box.x0; x < box.x1; ++x) {
      add(edges, {x, box.y0}, {x + 1, box.y0});
      add(edges, {x + 1, box.y1}, {x, box.y1});
    }
    for (int y = box.y0; y < box.y1; ++y) {
      add(edges, {box.x1, y}, {box.x1, y + 1});
      add(edges, {box.x0, y + 1}, {box.x0, y});
    }
  }
  return edges;
}

}  // namespace

std::vector<cloth::Hole> outline_of(const std::vector<cloth::Box>& boxes) {
  if (boxes.size() == 1) {
    const cloth::Box& b = boxes[0];
    return {{b.x0, b.y0}, {b.x1, b.y0}, {b.x1, b.y1}, {b.x0, b.y1}};
  }
  const Edges edges = edges_of(boxes);
  cloth::Hole start = edges.begin()->first;
  for (const auto& edge : edges)
    if (std::pair(edge.first.y, edge.first.x) < std::pair(start.y, start.x)) start = edge.first;
  std::vector<cloth::Hole> corners{start};
  cloth::Hole at = start, way{1, 0};
  do {
    for (const cloth::Hole turn : {cloth::Hole{-way.y, way.x}, way, cloth::Hole{way.y, -way.x}}) {  // right, straight on, left
      if (edges.count({at, at + turn}) == 0) continue;
      if (turn != way) corners.push_back(at);
      way = turn;
      break;
    }
    at = at + way;
  } while (at != start);
  if (corners.size() > 1 && corners[1] == start) corners.erase(corners.begin());
  return corners;
}

}  // namespace cutwork
