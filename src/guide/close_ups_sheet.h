// The close-ups of one lesson while they are gathered: its sections in the order of work, the kinds of places they meet, one window a kind.
#pragma once

#include <vector>

#include "guide/close_ups_alike.h"
#include "guide/close_ups_corners.h"
#include "guide/close_ups_first_pass.h"

namespace guide {

class Sheet {
 public:
  Sheet(const course::Course& course, const std::vector<PlacedTrail>& trails, int lesson);
  /// In order of section; in each the start, then places in needle order, then join or end. Letters and likes are not given yet.
  std::vector<CloseUp> take();

 private:
  /// A section of the lesson; `work` is the lesson's work on its trail round it, without a gap.
  struct Part {
    int trail = 0;
    int item = 0;
    Span section, work;
    Needle needle;
    const PlacedTrail* placed = nullptr;
  };
  struct Place {
    std::size_t part = 0;
    Corner corner;
  };
  /// Places that are alike. `shown` is the first that no section's end cuts, or else the first.
  struct Alike {
    Place shown;
    bool cut = false;
    std::size_t own = 0;  ///< of `holes`, the shown one's
    std::vector<cloth::Hole> holes;
  };
  enum class Rank { start, place, new_thread, end };
  struct Draft {
    std::size_t part = 0;
    Rank rank = Rank::start;
    CloseUp close_up;
    std::vector<std::size_t> further;  ///< parts at other places that it speaks for
  };
  class Gathered;

  void join_sections();
  Span with_lead_in(const Part& part) const;
  void show_starts();
  void show_corners();
  void show_steps();
  void show_new_threads();
  void show_ends();
  bool seen(std::size_t part) const;
  bool shown_at_another_place(std::size_t part, Shows shows, const Span& numbered, cloth::Hole hole);
  void show(const Alike& alike);
  void draft(std::size_t part, Rank rank, Shows shows, const Span& numbered, const Span& also, cloth::Hole own);

  int lesson_;
  std::vector<Part> parts_;
  std::vector<Draft> drafts_;
  FirstPass first_pass_;
};

}  // namespace guide
