// The cue sheet of a lesson's stills: for each, what is said and how long it stays.
#pragma once

#include <string>
#include <vector>

#include "picture/film.h"
#include "words/phrases.h"

namespace publish {

struct Cue {
  std::string file, title, words;
  double seconds = 3;
};

std::string cues_text(const words::Phrases& phrases, const std::string& title, const std::vector<Cue>& cues);
/// RFC 4180 with a line of headings.
std::string cues_csv(const words::Phrases& phrases, const std::vector<Cue>& cues);
/// WebVTT (W3C): one cue a still with its words, one after another.
std::string cues_vtt(const std::vector<Cue>& cues);
/// The same for a player's list of chapters: one cue a close-up with its title.
std::string chapters_vtt(const std::vector<Cue>& cues);

}  // namespace publish
