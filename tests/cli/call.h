// Calls the program in a folder of its own and keeps what it said.
#pragma once

#include <sys/wait.h>

#include <cstdlib>
#include <string>

#include "folder.h"

struct Said {
  int code = -1;
  std::string out, err;
};

/// Runs `tellekant ARGUMENTS` by the shell in the folder; arguments are quoted by the caller. `before` goes in front ("echo x |", "cat f |").
inline Said call(const TestFolder& folder, const std::string& arguments, const std::string& before = "") {
  const std::string command = "cd '" + folder.path.string() + "' && " + before + " " + TELLEKANT_PROGRAM + " " + arguments + " >.out 2>.err </dev/null";
  const std::string piped = "cd '" + folder.path.string() + "' && " + before + " " + TELLEKANT_PROGRAM + " " + arguments + " >.out 2>.err";
  const int status = std::system((before.empty() ? command : piped).c_str());
  Said said{WIFEXITED(status) ? WEXITSTATUS(status) : -1, bytes_of(folder / ".out"), bytes_of(folder / ".err")};
  std::filesystem::remove(folder / ".out");
  std::filesystem::remove(folder / ".err");
  return said;
}

inline void put(const TestFolder& folder, const std::string& name, const std::string& text) {
  std::ofstream(folder / name, std::ios::binary) << text;
}

inline const std::string small_course = R"(format = 1

[course]
title = "Two Rings"

[cloth]
count = 22

[thread.heavy]
pearl = 5

[[part]]
name = "ring"
kind = "blocks"
thread = "heavy"
start = [0, 0]
first = "across"
path = "NE 2, SE 1, SW 1"
)";
