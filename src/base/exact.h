// Decimals without sign that are never rounded: prices. Two prices added or one taken so many times are exact to the last digit.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace base {

class Exact {
 public:
  Exact() = default;  ///< 0
  /// "4.50", "12"; nothing where it is no such number. It keeps its digits behind the point.
  static std::optional<Exact> parse(std::string_view text);

  Exact times(unsigned n) const;
  Exact plus(const Exact& other) const;
  std::string text() const;  ///< "13.50": as many digits behind the point as the finest of what went in
  friend bool operator==(const Exact&, const Exact&) = default;

 private:
  std::string digits_ = "0";  ///< without the point; no zeros in front that are not needed
  std::size_t places_ = 0;    ///< of them behind the point
};

}  // namespace base
