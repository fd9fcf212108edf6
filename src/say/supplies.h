// What must be bought, in words: rows that the text, the shopping page and the window show alike.
#pragma once

#include <string>
#include <vector>

#include "say/say.h"

namespace say {

struct SupplyRow {
  std::string what;  ///< "pearl cotton 8, colour #FFFFFF (fine)"
  std::string one;   ///< for a student: "6.2 m, 13 lengths, 1 ball"
  std::string all;   ///< for all sets: "62 m, 2 balls"
  std::string cost;  ///< of all sets, or empty
};

struct SuppliesTold {
  std::string sets;  ///< "10 students and 2 spare sets"
  std::vector<SupplyRow> rows;
  std::vector<std::string> sums;   ///< a line for each currency
  std::vector<std::string> notes;  ///< how the thread comes about, one paragraph a thread; what each buying her own changes
};

SuppliesTold supplies(const Voice& voice, const plan::Plan& plan);
/// "pearl cotton 8, colour #FFFFFF (fine)"
std::string thread_to_buy(const Voice& voice, const plan::Supplies::Thread& thread);
/// Metres, rounded up to a tenth.
words::Decimal metres_up(double metres);
/// How many copies of the pages for each hand, as the class list has it.
std::string copies(const Voice& voice);
/// The cut cloth in cm and in inches, both rounded up: to half a centimetre and a quarter of an inch.
std::string cloth_size(const Voice& voice);

}  // namespace say
