// The whole design, small: what is stitched and what is not, the close-ups framed and lettered, every place that one speaks for marked, and
// the corners that are to be tacked. Far apart or near, it is drawn in lines, not stitch by stitch, so that it stays light.
#pragma once

#include "picture/window.h"

namespace picture {

struct MapFrame {
  std::string letter;
  cloth::Box window;
  std::vector<cloth::Hole> places;   ///< that it speaks for
  std::vector<std::string> marks{};  ///< in step with the places where each has its own, else all bear the letter
};

struct MapOrder {
  double width = 60, height = 50;  ///< mm at the most
  std::vector<MapFrame> frames;
  std::vector<cloth::Hole> corners;  ///< numbered from 1
};

/// The design with its stitches at the lesson's stage, drawn once and used on every page of a lesson.
class DesignMap {
 public:
  explicit DesignMap(const Sheet& sheet);
  Picture draw(const MapOrder& order) const;
  /// The same without its drawing: size and marks.
  Picture outline(const MapOrder& order) const;

 private:
  const Sheet& sheet_;
  cloth::Box extent_;
  std::vector<Seen> lines_;  ///< stitches of a row run together; of blocks each by itself
};

/// Stitches that go on from one another in one line, at one stage, as one line.
std::vector<Seen> run_together(const std::vector<Seen>& stitches);

}  // namespace picture
