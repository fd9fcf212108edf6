#include "publish/cues.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "paint/svg/svg.h"
#include "publish/publish.h"

namespace publish {
namespace {

/// "00:01:02.500"
std::string clock(double seconds) {
  const auto ms = static_cast<long>(std::lround(seconds * 1000));
  return fmt::format("{:02}:{:02}:{:02}.{:03}", ms / 3600000, ms / 60000 % 60, ms / 1000 % 60, ms % 1000);
}

std::string vtt_cue(const std::string& name, double from, double to, std::string words) {
  std::replace(words.begin(), words.end(), '\n', ' ');
  return fmt::format("\n{}\n{} --> {}\n{}\n", name, clock(from), clock(to), paint::escaped(words));
}

}  // namespace

std::string cues_text(const words::Phrases& phrases, const std::string& title, const std::vector<Cue>& cues) {
  std::string text = title + '\n', chapter;
  double at = 0;
  for (const Cue& cue : cues) {
    if (cue.title != chapter) text += '\n' + cue.title + '\n';
    chapter = cue.title;
    text += fmt::format("{}  {}  {}\n    {}\n", clock(at).substr(0, 8),
                        phrases.say("cues.seconds", {{"seconds", words::Decimal{cue.seconds, 1}}}), cue.file, cue.words);
    at += cue.seconds;
  }
  return text;
}

std::string cues_csv(const words::Phrases& phrases, const std::vector<Cue>& cues) {
  std::string text;
  for (const char* key : {"cues.head.file", "cues.head.at", "cues.head.seconds", "cues.head.title"})
    text += csv_field(phrases.say(key)) + ',';
  text += csv_field(phrases.say("cues.head.words")) + "\r\n";
  double at = 0;
  for (const Cue& cue : cues) {
    text += fmt::format("{},{},{:.1f},{},{}\r\n", csv_field(cue.file), clock(at), cue.seconds, csv_field(cue.title), csv_field(cue.words));
    at += cue.seconds;
  }
  return text;
}

std::string cues_vtt(const std::vector<Cue>& cues) {
  std::string text = "WEBVTT\n";
  double at = 0;
  for (const Cue& cue : cues) {
    text += vtt_cue(cue.file, at, at + cue.seconds, cue.words);
    at += cue.seconds;
  }
  return text;
}

std::string chapters_vtt(const std::vector<Cue>& cues) {
  std::string text = "WEBVTT\n";
  double at = 0;
  for (std::size_t i = 0; i < cues.size();) {
    const double begins = at;
    const Cue& first = cues[i];
    for (; i < cues.size() && cues[i].title == first.title; ++i) at += cues[i].seconds;
    text += vtt_cue(first.file, begins, at, first.title);
  }
  return text;
}

}  // namespace publish
