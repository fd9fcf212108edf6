#include "session/history.h"

namespace session {

History::History(std::string text) : states_{{std::make_shared<const std::string>(std::move(text)), {}, 0}}, saved_(states_[0].text) {}

void History::change(std::string name, std::string text, std::uint64_t run) {
  if (text == *now()) return;
  states_.resize(at_ + 1);
  auto next = std::make_shared<const std::string>(std::move(text));
  if (run != 0 && at_ > 0 && states_[at_].run == run) {
    states_[at_].text = std::move(next);
    return;
  }
  states_.push_back({std::move(next), std::move(name), run});
  ++at_;
}

bool History::undo() {
  if (at_ == 0) return false;
  states_[at_].run = 0;
  --at_;
  states_[at_].run = 0;
  return true;
}

bool History::redo() {
  if (at_ + 1 >= states_.size()) return false;
  ++at_;
  return true;
}

std::string_view History::undo_name() const { return at_ > 0 ? std::string_view(states_[at_].name) : std::string_view{}; }
std::string_view History::redo_name() const { return at_ + 1 < states_.size() ? std::string_view(states_[at_ + 1].name) : std::string_view{}; }

}  // namespace session
