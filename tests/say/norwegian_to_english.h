// The Norwegian sentences of a count-in, put into English word by word, so that one reader follows both. Words and grammar only.
#pragma once

#include <regex>
#include <string>
#include <vector>

namespace reader {

struct Rule {
  const char *norwegian, *english;
};

inline const std::vector<Rule> rules = {
    {R"(^Tell (.*?) fra (.*)\. Der kommer nålen opp: 1\.$)", "From $2 count $1. The needle comes up there: 1."},
    {R"(^Fra (.*): (.*)\.$)", "From $1: $2."},
    {R"(^Nålen kommer opp i hullet til et sting som alt er der: (.*)\. Det er 1\.$)", "The needle comes up in the very hole of a stitch already there: $1. That is 1."},
    {R"(^Det er hullet til (.*)\.$)", "It is the hole of $1."},
    {R"((\d+) tråd(?:er)? (rett )?)", "$1 threads $2"},
    {", deretter ", ", then "},
    {"threads (rett )?opp", "threads up"},
    {"threads (rett )?ned", "threads down"},
    {"threads (rett )?mot venstre", "threads to the left"},
    {"threads (rett )?mot høyre", "threads to the right"},
    {"krysset mellom de to brettene midt på stoffet", "the crossing of the two folds in the middle of the cloth"},
    {R"( (?:i|til|på) «(\w+)»)", " of the $1"},
    {"den øvre enden av", "the upper end of"},
    {"den nedre enden av", "the lower end of"},
    {"den venstre enden av", "the left end of"},
    {"den høyre enden av", "the right end of"},
    {"det venstre stinget i ", "the left-hand stitch of "},
    {"det høyre stinget i ", "the right-hand stitch of "},
    {"det øverste stinget i ", "the top stitch of "},
    {"det nederste stinget i ", "the bottom stitch of "},
    {R"(det (\S+) stinget fra venstre i )", "the $1 stitch from the left in "},
    {R"(det (\S+) stinget ovenfra i )", "the $1 stitch from the top in "},
    {R"(den (\S+) blokken med klokka etter )", "the $1 block clockwise after "},
    {R"(den (\S+) blokken mot klokka etter )", "the $1 block anticlockwise after "},
    {"(?:det|den) venstre av de ", "the left-hand one of the "},
    {"(?:det|den) høyre av de ", "the right-hand one of the "},
    {"(?:det|den) øvre av ", "the upper one of the "},
    {"(?:det|den) nedre av ", "the lower one of the "},
    {"(hjørnene|bladene|blokkene) lengst til venstre", "leftmost $1"},
    {"(hjørnene|bladene|blokkene) lengst til høyre", "rightmost $1"},
    {"(hjørnet|bladet|blokken) lengst til venstre", "the leftmost $1"},
    {"(hjørnet|bladet|blokken) lengst til høyre", "the rightmost $1"},
    {"(?:det|den) øverste (hjørnet|bladet|blokken)", "the topmost $1"},
    {"(?:det|den) nederste (hjørnet|bladet|blokken)", "the lowest $1"},
    {"øverste", "topmost"},
    {"nederste", "lowest"},
    {"hjørnene", "corners"},
    {"bladene", "petals"},
    {"blokkene", "blocks"},
    {"hjørnet", "corner"},
    {"bladet", "petal"},
    {"blokken", "block"},
    {"the første ", "the first "},
    {"the andre ", "the second "},
    {"the tredje ", "the third "},
    {"the fjerde ", "the fourth "},
    {"the femte ", "the fifth "},
    {"the sjette ", "the sixth "},
    {"the sjuende ", "the seventh "},
    {"the åttende ", "the eighth "},
    {"the niende ", "the ninth "},
    {"the tiende ", "the tenth "},
    {"the ellevte ", "the eleventh "},
    {"the tolvte ", "the twelfth "},
    {R"(the (\d+)\. )", "the $1th "},
};

inline std::string in_english(std::string words) {
  for (const Rule& rule : rules) words = std::regex_replace(words, std::regex(rule.norwegian), rule.english);
  return words;
}

}  // namespace reader
