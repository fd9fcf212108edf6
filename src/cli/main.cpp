// The command line. One exception boundary: what is thrown here is a mistake of the program or of the machine.
#include <cstdio>
#include <exception>
#include <map>

#include "cli/options.h"

int main(int count, char** arguments) {
  try {
    const cli::Parsed parsed = cli::parse(count, arguments);
    if (parsed.exit) return *parsed.exit;
    const std::map<std::string, int (*)(const cli::Options&)> commands{{"check", cli::run_check},
                                                                        {"plan", cli::run_plan},
                                                                        {"handouts", cli::run_handouts},
                                                                        {"calendar", cli::run_calendar},
                                                                        {"split", cli::run_split},
                                                                        {"mistake", cli::run_mistake},
                                                                        {"supplies", cli::run_supplies},
                                                                        {"tidy", cli::run_tidy},
                                                                        {"new", cli::run_new}};
    return commands.at(parsed.options.command)(parsed.options);
  } catch (const std::bad_alloc&) {
    std::fputs("tellekant: there is not enough memory for this\n", stderr);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "tellekant: a mistake of the program itself: %s\n", error.what());
  }
  return cli::not_written;
}
