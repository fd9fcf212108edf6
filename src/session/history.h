// A course file being edited: its text now, and every text before and after, by the name of the change between them. Knows nothing of what a text says.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace session {

using Text = std::shared_ptr<const std::string>;

class History {
 public:
  explicit History(std::string text);
  const Text& now() const { return states_[at_].text; }
  /// A change: everything that was undone is gone. Changes with the same `run` (not 0) that follow one another are one step: a drag, a word being typed.
  void change(std::string name, std::string text, std::uint64_t run = 0);
  bool undo();
  bool redo();
  /// The name of what undo would take back, redo bring again; empty where there is nothing.
  std::string_view undo_name() const;
  std::string_view redo_name() const;
  /// This is what lies on disk now.
  void mark_saved() { saved_ = now(); }
  bool saved() const { return *saved_ == *now(); }

 private:
  struct State {
    Text text;
    std::string name;       ///< of the change that led here
    std::uint64_t run = 0;
  };
  std::vector<State> states_;
  std::size_t at_ = 0;
  Text saved_;
};

}  // namespace session
