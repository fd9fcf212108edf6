#include "session/session.h"

#include <fmt/format.h>

#include "base/whole_file.h"
#include "file/course_file.h"

namespace session {

Session::Session(std::filesystem::path spare, std::function<void()> ready) : spare_(std::move(spare)), planner_(std::move(ready)) {}

std::filesystem::path Session::kept_path() const { return unsaved_path(file_ ? *file_ : spare_ / "unnamed.course.toml", spare_); }

/// This text is what the file has now.
void Session::settle(const std::filesystem::path& file, const std::string& text) {
  if (!file_ || *file_ != file) {
    lock_.reset();
    lock_ = FileLock::take(kept_path().string() + ".lock");
    open_elsewhere_ = !lock_.has_value();
  }
  file_ = file;
  on_disk_ = text;
  history_.mark_saved();
}

base::Result<void> Session::open(const std::filesystem::path& file) {
  auto text = file::load(file.string());
  if (!text) return tl::make_unexpected(text.error());
  history_ = History(*text);
  seen_ = nullptr;
  faults_.clear();
  file_.reset();
  lock_.reset();
  file_ = file;
  lock_ = FileLock::take(kept_path().string() + ".lock");
  open_elsewhere_ = !lock_.has_value();
  settle(file, *text);
  kept_ = history_.now();
  unsaved_ = find_unsaved(kept_path(), *text);
  ask();
  return {};
}

void Session::begin(std::string text) {
  history_ = History(std::move(text));
  seen_ = nullptr;
  faults_.clear();
  file_.reset();
  lock_.reset();
  on_disk_.clear();
  kept_ = history_.now();
  unsaved_.reset();
  ask();
}

void Session::ask() { planner_.ask(history_.now(), ++generation_); }

bool Session::poll() {
  const Seen next = planner_.take();
  if (!next || next->generation < known_) return false;
  known_ = next->generation;
  faults_ = next->faults;
  if (next->faults.empty()) seen_ = next;
  return true;
}

void Session::wait() {
  planner_.wait();
  poll();
}

base::Result<void> Session::apply(const Edit& edit) {
  auto changed = edit.change(text());
  if (!changed) return base::trouble(base::TroubleKind::input, fmt::format("cannot {}: what it changes is not there", edit.name));
  const file::Read read = file::read(*changed);
  if (!read.faults.empty()) {
    const base::Fault& fault = read.faults.front();
    return base::trouble(base::TroubleKind::input, fmt::format("cannot {}: found {}; expected {}", edit.name, fault.found, fault.expected));
  }
  history_.change(edit.name, std::move(*changed), edit.run);
  ask();
  return {};
}

bool Session::undo() {
  if (!history_.undo()) return false;
  ask();
  return true;
}

bool Session::redo() {
  if (!history_.redo()) return false;
  ask();
  return true;
}

bool Session::changed_on_disk() const {
  if (!file_) return false;
  const auto now = file::load(file_->string());
  return now && *now != on_disk_;
}

base::Result<void> Session::save(bool over_changes) {
  if (!file_) return base::trouble(base::TroubleKind::output, "the course has no file yet");
  if (!over_changes && changed_on_disk())
    return base::trouble(base::TroubleKind::output, fmt::format("{} was changed by someone else since it was opened", file_->string()));
  return save_as(*file_);
}

base::Result<void> Session::save_as(const std::filesystem::path& file) {
  if (auto written = base::write_whole(file, text()); !written) return written;
  forget_unsaved(kept_path());
  settle(file, text());
  kept_ = history_.now();
  return {};
}

void Session::take_up_unsaved_work() {
  if (!unsaved_) return;
  history_.change("take up unsaved work", *std::exchange(unsaved_, std::nullopt));
  ask();
}

void Session::leave_unsaved_work() {
  unsaved_.reset();
  forget_unsaved(kept_path());
}

base::Result<void> Session::keep() {
  if (unsaved_ || history_.now() == kept_) return {};
  kept_ = history_.now();
  if (history_.saved()) {
    forget_unsaved(kept_path());
    return {};
  }
  return keep_unsaved(kept_path(), text());
}

}  // namespace session
