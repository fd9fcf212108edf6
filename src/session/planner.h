// Plans in the background on what it is given, never twice at once; a newer request stops an older one. Whoever asks never waits.
#pragma once

#include <condition_variable>
#include <cstdint>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

#include "base/fault.h"
#include "check/check.h"
#include "course/course.h"
#include "plan/plan.h"
#include "session/history.h"

namespace session {

/// Everything known of one state of the text. Never changed once it is made; shared between threads.
struct Snapshot {
  std::uint64_t generation = 0;
  Text text;
  base::Faults faults;    ///< where there are any, the rest is that of the last good text
  course::Course course;
  plan::Plan plan;
  std::vector<check::Snag> snags;
};
using Seen = std::shared_ptr<const Snapshot>;

/// The snapshot of a text, worked out here and now; nothing when it was stopped.
Seen look_at(const Text& text, std::uint64_t generation, std::stop_token stop);

class Planner {
 public:
  /// `ready` is called on the worker's thread each time a snapshot is there (to wake a window); it must not call back.
  explicit Planner(std::function<void()> ready = {});
  ~Planner();
  void ask(Text text, std::uint64_t generation);
  /// The newest snapshot that is ready and was not taken before.
  Seen take();
  /// Waits until everything that was asked is there (for tests and before printing).
  void wait();

 private:
  void work(std::stop_token stop);
  std::function<void()> ready_;
  std::mutex mutex_;
  std::condition_variable_any changed_;
  std::optional<std::pair<Text, std::uint64_t>> asked_;
  std::stop_source running_;
  bool busy_ = false;
  Seen done_;
  std::jthread thread_;
};

}  // namespace session
