// What was asked for on the command line, and where results and messages go.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace cli {

enum ExitCode { fine = 0, stopped = 1, bad_call = 2, not_written = 3 };

/// mistake: what a student did; stitches count from 1.
struct MistakeMade {
  std::string part;
  int pass = 1, place = 1, from = 1;
  std::optional<int> done;
  std::vector<std::string> off;  ///< "1 E"
};

struct Options {
  std::string command;             ///< check, plan, handouts, calendar, supplies, split, mistake, tidy, new
  std::vector<std::string> files;  ///< one, or several for check
  std::string into;                ///< handouts: the folder
  std::optional<int> lesson;
  std::vector<std::string> forms{"png"};
  std::string sheets = "single";
  bool zip = false;  ///< handouts: the packet
  bool clear = false;  ///< handouts: the ground of stills
  std::optional<std::string> hand, paper;  ///< as written; the course's own where absent
  bool stage_pieces = false;       ///< supplies: what the teacher stitches beforehand
  std::string list_form = "text";  ///< supplies: text or csv
  bool large_print = false;
  bool black_and_white = false;
  double dpi = 300;
  std::optional<std::string> language;  ///< of pages and lists; the course's own where absent
  std::optional<int> lessons;  ///< split: how many
  bool write = false;          ///< tidy, split
  MistakeMade mistake;
  bool quiet = false, verbose = false;
};

/// Reads the arguments. Where there is nothing to run (help, version, a wrong call), the exit code instead, all said already.
struct Parsed {
  Options options;
  std::optional<int> exit;
};
Parsed parse(int count, char** arguments);

int run_check(const Options& options);
int run_plan(const Options& options);
int run_handouts(const Options& options);
int run_calendar(const Options& options);
int run_split(const Options& options);
int run_supplies(const Options& options);
int run_mistake(const Options& options);
int run_tidy(const Options& options);
int run_new(const Options& options);

}  // namespace cli
