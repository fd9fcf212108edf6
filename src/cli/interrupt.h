// Ctrl-C while files are made: asks the work to stop, so that nothing half-written stays. Signals are caught as long as the guard lives.
#pragma once

#include <signal.h>

#include <stop_token>
#include <thread>

namespace cli {

class Interrupt {
 public:
  Interrupt();
  Interrupt(const Interrupt&) = delete;
  Interrupt& operator=(const Interrupt&) = delete;
  ~Interrupt();
  std::stop_token token() const { return source_.get_token(); }

 private:
  std::stop_source source_;
  sigset_t waited_{}, before_{};
  std::thread waiter_;
};

}  // namespace cli
