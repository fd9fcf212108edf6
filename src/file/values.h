// One value of a course file: its type and its range. Each gives the value, or adds one fault and gives nothing.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "cloth/hole.h"
#include "file/fault_list.h"
#include "file/node.h"

namespace file {

std::optional<int> read_whole(const Node& node, int least, int most, FaultList& faults);
/// Whole or with decimals; never infinite, never "not a number".
std::optional<double> read_number(const Node& node, double least, double most, FaultList& faults);
std::optional<bool> read_flag(const Node& node, FaultList& faults);
/// A local date of the years first_year to last_year.
std::optional<base::Date> read_date(const Node& node, FaultList& faults);
/// [x, y] in whole numbers from -limit to limit.
std::optional<cloth::Hole> read_hole(const Node& node, FaultList& faults);
/// [x, y] in whole or half threads, in the same limits; given in half threads.
std::optional<cloth::Hole> read_middle(const Node& node, FaultList& faults);
/// [width, height] in threads, each from 1 to the limit.
std::optional<cloth::Hole> read_size(const Node& node, FaultList& faults);
/// "#RRGGBB".
std::optional<std::string> read_colour(const Node& node, FaultList& faults);
/// The index of the word among the words.
std::optional<std::size_t> read_word(const Node& node, const std::vector<std::string>& words, FaultList& faults);
/// A text without further rules.
std::optional<std::string> read_any_text(const Node& node, FaultList& faults);
/// A text of one line, without control characters, of at most so many characters; it may be empty.
std::optional<std::string> read_line(const Node& node, int most, FaultList& faults);
/// A text of any number of lines.
std::optional<std::string> read_notes(const Node& node, FaultList& faults);
/// A name: one line, not empty, no blanks at its ends, no `/`.
std::optional<std::string> read_name(const Node& node, FaultList& faults);
/// What is wrong with a name's letters; also for names that are keys. `place` and `length` are told.
bool name_is_right(std::string_view name, base::TextPlace place, int length, FaultList& faults);
/// An exact decimal without sign: "4.50" as text, or 4.50 or 4 as number.
std::optional<std::string> read_price(const Node& node, FaultList& faults);
/// "18:30", or the local time 18:30:00; given as "18:30".
std::optional<std::string> read_time(const Node& node, FaultList& faults);

inline constexpr std::chrono::year first_year{1900}, last_year{2999};
inline constexpr int name_limit = 60, line_limit = 200, notes_limit = 4000;  ///< characters

}  // namespace file
