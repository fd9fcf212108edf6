#include "cli/interrupt.h"

namespace cli {

Interrupt::Interrupt() {
  sigemptyset(&waited_);
  for (const int signal : {SIGINT, SIGTERM, SIGHUP, SIGUSR1}) sigaddset(&waited_, signal);
  pthread_sigmask(SIG_BLOCK, &waited_, &before_);
  waiter_ = std::thread([this] {
    int signal = 0;
    sigwait(&waited_, &signal);
    if (signal != SIGUSR1) source_.request_stop();
  });
}

Interrupt::~Interrupt() {
  pthread_kill(waiter_.native_handle(), SIGUSR1);  // lets the waiting thread go
  waiter_.join();
  pthread_sigmask(SIG_SETMASK, &before_, nullptr);
}

}  // namespace cli
