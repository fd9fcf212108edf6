// Whether a call ends the program, tried in a child process.
#pragma once

#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <string>

/// What the call wrote to standard error before it aborted; "lives" when it came back.
template <class Call>
std::string last_words(Call call) {
  int pipe_ends[2] = {-1, -1};
  if (pipe(pipe_ends) != 0) return "no pipe";
  const pid_t child = fork();
  if (child == 0) {
    std::signal(SIGABRT, SIG_DFL);  // the test program's own handler would report a failed test
    dup2(pipe_ends[1], STDERR_FILENO);
    call();
    _exit(0);
  }
  close(pipe_ends[1]);
  std::string words;
  char letter = 0;
  while (read(pipe_ends[0], &letter, 1) == 1) words += letter;
  close(pipe_ends[0]);
  int status = 0;
  waitpid(child, &status, 0);
  return WIFSIGNALED(status) && WTERMSIG(status) == SIGABRT ? words : "lives";
}
