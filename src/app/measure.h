// How long frames and edits take: a walk of pans and zooms over a course, the same every time. Times are of the steady clock, in
// milliseconds; what they are worth depends on what else the machine does.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "app/desk.h"

namespace app {

struct FrameCost {
  double whole_ms = 0;    ///< everything from the new frame to its finished lists (and what `show` does with them)
  double toolkit_ms = 0;  ///< of it: the toolkit's own beginning and end of a frame, and `show`
  long submitted = 0;     ///< triangles in the finished lists
  long visible = 0;       ///< of them: those whose bounding box meets their clip rectangle with some area
};

/// All frames at one scale of the cloth.
struct FramesAt {
  float pixels = 0;  ///< of one thread
  std::vector<FrameCost> frames;
};

struct MeasuredFrames {
  std::string where;  ///< "without a window, processor time", "in a window ..."
  std::vector<FramesAt> scales;
};

enum class Timed { processor, wall };

/// The part of a frame that differs: how the toolkit begins it, and how what is drawn is shown.
struct Stage {
  std::string where;
  Timed timed = Timed::processor;
  std::function<void()> begin;
  std::function<void()> show;
};

/// Pans across the whole design at each of some scales from the finest to the coarsest. The desk has a course that is planned, the context
/// a font.
MeasuredFrames measure_frames(Desk& desk, const Stage& stage, float width, float height);

/// From an edit that moves the course's first part by a thread to the moment when its new plan and snags can be seen, some twenty times;
/// each is undone. Empty when the course has no part.
std::vector<double> measure_edits(session::Session& session);

/// What was drawn last, in triangles: see FrameCost.
void count_triangles(const ImDrawData& drawn, FrameCost& cost);

std::string table_of(const MeasuredFrames& measured);
std::string table_of_edits(const std::vector<double>& ms, std::size_t stitches);
/// The value that this share (0 to 1) of all does not exceed; 0 of nothing.
double share(std::vector<double> values, double part);

}  // namespace app
