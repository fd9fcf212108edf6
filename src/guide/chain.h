// How one feature follows another on the cloth: whether the eye can go from one to the next, which way the step goes, which way round a
// ring runs. Places are the middles of boxes.
#pragma once

#include <optional>
#include <vector>

#include "cloth/hole.h"
#include "cloth/way.h"

namespace guide {

enum class Chain;

/// For each box: can the eye go on from it to the next of the chain (after the last of a closed chain comes the first)? Yes where no gap
/// between them is wider than `reach` threads or than the larger of the two; with `reach` below 0 always.
std::vector<bool> links(const std::vector<cloth::Box>& boxes, Chain chain, int reach);
/// 1 where the ring through the middles runs clockwise on the chart, -1 where anticlockwise, 0 where it encloses nothing.
int turn_of(const std::vector<cloth::Box>& boxes);
/// The nearest of the eight ways from one middle to the other; none where they are the same.
std::optional<cloth::Way> way_of_step(const cloth::Box& from, const cloth::Box& to);
/// Do the steps to `a` and to `b` have different ways, at least 30 degrees apart?
bool clearly_apart(const cloth::Box& from, const cloth::Box& a, const cloth::Box& b);

}  // namespace guide
