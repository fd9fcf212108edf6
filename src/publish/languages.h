// The tables of phrases that are built into the programs.
#pragma once

#include <string_view>
#include <vector>

#include "words/phrases.h"

namespace publish {

/// By the code of the table's file ("en", "nb"); what the table lacks is said in English, and all of a language that is not there. Each table is read
/// once and stays; safe from any thread.
const words::Phrases& phrases_in(std::string_view language);

/// The codes of those that are there.
std::vector<std::string_view> languages();

}  // namespace publish
