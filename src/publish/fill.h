// Page templates filled in: {{key}} is a phrase, escaped; {{=name}} is a value of the page, put in as it is. What is put in is not looked
// through again.
#pragma once

#include <map>
#include <string>
#include <string_view>

#include "words/phrases.h"

namespace publish {

/// A name or key that is not there is a mistake of the program (base::require).
std::string fill(std::string_view page, const std::map<std::string, std::string, std::less<>>& values, const words::Phrases& phrases);

/// Text as a JSON string that may stand in an HTML page: nothing in it ends the script that it stands in.
std::string json_text(std::string_view text);

/// "sha256-..." of a style or script, as a content security policy names it (CSP level 3, SHA-256 in base 64).
std::string policy_hash(std::string_view text);

}  // namespace publish
