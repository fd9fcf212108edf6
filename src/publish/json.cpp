#include "publish/json.h"

#include <fmt/format.h>

namespace publish {

void Json::before() {
  if (after_key_) {
    after_key_ = false;
    return;
  }
  if (empty_.empty()) return;
  if (!empty_.back()) out_ << ',';
  empty_.back() = false;
  out_ << '\n';
  for (std::size_t i = 0; i < empty_.size(); ++i) out_ << "  ";
}

void Json::open(char bracket) {
  before();
  out_ << bracket;
  empty_.push_back(true);
}

void Json::close(char bracket) {
  const bool empty = empty_.back();
  empty_.pop_back();
  if (!empty) {
    out_ << '\n';
    for (std::size_t i = 0; i < empty_.size(); ++i) out_ << "  ";
  }
  out_ << bracket;
  if (empty_.empty()) out_ << '\n';
}

void Json::key(std::string_view name) {
  before();
  out_ << '"' << name << "\": ";
  after_key_ = true;
}

void Json::value(std::string_view text) {
  before();
  out_ << '"';
  for (const char c : text) {
    switch (c) {
      case '"': out_ << "\\\""; break;
      case '\\': out_ << "\\\\"; break;
      case '\n': out_ << "\\n"; break;
      case '\t': out_ << "\\t"; break;
      default:
        if (static_cast<unsigned char>(c) < 0x20)
          out_ << fmt::format("\\u{:04x}", static_cast<unsigned>(c));
        else
          out_ << c;
    }
  }
  out_ << '"';
}

void Json::value(bool flag) {
  before();
  out_ << (flag ? "true" : "false");
}

void Json::value(std::int64_t number) {
  before();
  out_ << number;
}

void Json::value(double number, int places) {
  before();
  std::string text = fmt::format("{:.{}f}", number, places);
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
  }
  out_ << (text == "-0" ? "0" : text);
}

void Json::null() {
  before();
  out_ << "null";
}

void Json::hole(cloth::Hole hole) {
  before();
  out_ << '[' << hole.x << ", " << hole.y << ']';
}

void Json::stitch(cloth::Stitch stitch) {
  before();
  out_ << "[[" << stitch.a.x << ", " << stitch.a.y << "], [" << stitch.b.x << ", " << stitch.b.y << "]]";
}

}  // namespace publish
