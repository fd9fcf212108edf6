#include "session/planner.h"

#include "file/course_file.h"

namespace session {

Seen look_at(const Text& text, std::uint64_t generation, std::stop_token stop) {
  auto snapshot = std::make_shared<Snapshot>();
  snapshot->generation = generation;
  snapshot->text = text;
  file::Read read = file::read(*text);
  snapshot->faults = std::move(read.faults);
  if (!snapshot->faults.empty()) return snapshot;
  snapshot->course = std::move(read.course);
  auto plan = plan::make_plan(snapshot->course, stop);
  if (!plan) return nullptr;
  snapshot->plan = std::move(*plan);
  snapshot->snags = check::look(snapshot->course, snapshot->plan);
  return stop.stop_requested() ? nullptr : snapshot;
}

Planner::Planner(std::function<void()> ready) : ready_(std::move(ready)), thread_([this](std::stop_token stop) { work(std::move(stop)); }) {}

Planner::~Planner() {
  thread_.request_stop();
  const std::lock_guard lock(mutex_);
  running_.request_stop();
}

void Planner::ask(Text text, std::uint64_t generation) {
  const std::lock_guard lock(mutex_);
  asked_.emplace(std::move(text), generation);
  running_.request_stop();
  changed_.notify_all();
}

Seen Planner::take() {
  const std::lock_guard lock(mutex_);
  return std::exchange(done_, nullptr);
}

void Planner::wait() {
  std::unique_lock lock(mutex_);
  changed_.wait(lock, [this] { return !asked_ && !busy_; });
}

void Planner::work(std::stop_token stop) {
  std::unique_lock lock(mutex_);
  while (changed_.wait(lock, stop, [this] { return asked_.has_value(); })) {
    const auto [text, generation] = *std::exchange(asked_, std::nullopt);
    running_ = std::stop_source();
    busy_ = true;
    const std::stop_token token = running_.get_token();
    lock.unlock();
    Seen seen = look_at(text, generation, token);
    lock.lock();
    busy_ = false;
    if (seen) done_ = std::move(seen);
    changed_.notify_all();
    if (done_ && ready_) ready_();
  }
}

}  // namespace session
