// Stitches of a row laid leg by leg.
#include "stitch/line_row.h"

#include <utility>

#include "stitch/rows.h"

namespace stitch {

Row make_row(const Line& line, std::vector<cloth::Hole> corners, int over) {
  Row row{std::move(corners), {}, {}, {}};
  row.stitches = row_stitches(line, row.corners, over);
  row.begins.push_back(0);
  for (std::size_t leg = 0; leg < line.legs.size(); ++leg) {
    const auto count = static_cast<std::size_t>(along(line.legs[leg].way, row.corners[leg], row.corners[leg + 1]) / over);
    row.legs.insert(row.legs.end(), count, static_cast<int>(leg));
    row.begins.push_back(row.begins.back() + count);
  }
  return row;
}

void add_features(Work& work, const Line& line, const Row& row, int number) {
  const std::size_t legs = line.legs.size();
  for (std::size_t corner = 0; corner <= legs; ++corner) {
    const bool turns = 0 < corner && corner < legs;
    Feature feature{Shape::corner, {}, row.corners[corner], number, static_cast<int>(corner)};
    if (line.closed && corner == legs) break;  // the first corner again
    if (turns || line.closed) {
      feature.stitches = {corner > 0 ? row.stitches[row.begins[corner] - 1] : row.stitches.back(), row.stitches[row.begins[corner]]};
    } else {
      feature.shape = Shape::end;
      feature.stitches = {corner == 0 ? row.stitches.front() : row.stitches.back()};
    }
    work.features.push_back(std::move(feature));
  }
}

void add_legs(Work& work, const Line& line, const Row& row, int number) {
  for (std::size_t leg = 0; leg < line.legs.size(); ++leg) {
    work.legs.push_back({number, static_cast<int>(leg), cloth::slanted(line.legs[leg].way),
                         static_cast<int>(row.begins[leg + 1] - row.begins[leg]), 0, row.corners[leg], row.corners[leg + 1]});
  }
}

}  // namespace stitch
