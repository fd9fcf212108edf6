// Streams JSON: objects, arrays, values, in the order they are given. Two blanks a level; arrays of plain values stay in one line.
#pragma once

#include <cstdint>
#include <ostream>
#include <string_view>
#include <vector>

#include "cloth/hole.h"

namespace publish {

class Json {
 public:
  explicit Json(std::ostream& out) : out_(out) {}

  /// Calls `inside` between the braces or brackets.
  template <class F>
  void object(F inside) {
    open('{');
    inside();
    close('}');
  }
  template <class F>
  void array(F inside) {
    open('[');
    inside();
    close(']');
  }
  void key(std::string_view name);
  void value(std::string_view text);
  void value(const char* text) { value(std::string_view(text)); }
  void value(bool flag);
  void value(int number) { value(static_cast<std::int64_t>(number)); }
  void value(std::int64_t number);
  /// A decimal of at most so many places, without trailing zeros.
  void value(double number, int places);
  void null();
  void hole(cloth::Hole hole);
  void stitch(cloth::Stitch stitch);

  template <class V>
  void member(std::string_view name, const V& v) {
    key(name);
    value(v);
  }

 private:
  void open(char bracket);
  void close(char bracket);
  void before();
  std::ostream& out_;
  std::vector<bool> empty_;  ///< of each open level: nothing written yet
  bool after_key_ = false;
};

}  // namespace publish
