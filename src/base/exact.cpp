#include "base/exact.h"

#include <algorithm>

namespace base {
namespace {

/// As many digits as stand before the point of "0.05" at least: one.
std::string trimmed(std::string digits, std::size_t places) {
  const std::size_t keep = places + 1;
  if (digits.size() < keep) digits.insert(0, keep - digits.size(), '0');
  const std::size_t zeros = std::min(digits.find_first_not_of('0'), digits.size());
  return digits.substr(std::min(zeros, digits.size() - keep));
}

bool all_digits(std::string_view text) { return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos; }

}  // namespace

std::optional<Exact> Exact::parse(std::string_view text) {
  const std::size_t point = text.find('.');
  const std::string_view whole = text.substr(0, point), part = point == std::string_view::npos ? "" : text.substr(point + 1);
  if (!all_digits(whole) || (point != std::string_view::npos && !all_digits(part))) return std::nullopt;
  Exact exact;
  exact.places_ = part.size();
  exact.digits_ = trimmed(std::string(whole) + std::string(part), part.size());
  return exact;
}

Exact Exact::times(unsigned n) const {
  Exact product;
  product.places_ = places_;
  std::string reversed;
  unsigned long long carry = 0;
  for (auto digit = digits_.rbegin(); digit != digits_.rend() || carry > 0;) {
    if (digit != digits_.rend()) carry += static_cast<unsigned long long>(*digit++ - '0') * n;
    reversed += static_cast<char>('0' + carry % 10);
    carry /= 10;
  }
  product.digits_ = trimmed({reversed.rbegin(), reversed.rend()}, places_);
  return product;
}

Exact Exact::plus(const Exact& other) const {
  Exact sum;
  sum.places_ = std::max(places_, other.places_);
  std::string a = digits_ + std::string(sum.places_ - places_, '0'), b = other.digits_ + std::string(sum.places_ - other.places_, '0');
  const std::size_t n = std::max(a.size(), b.size()) + 1;
  a.insert(0, n - a.size(), '0');
  b.insert(0, n - b.size(), '0');
  int carry = 0;
  for (std::size_t i = n; i-- > 0;) {
    const int at = (a[i] - '0') + (b[i] - '0') + carry;
    a[i] = static_cast<char>('0' + at % 10);
    carry = at / 10;
  }
  sum.digits_ = trimmed(std::move(a), sum.places_);
  return sum;
}

std::string Exact::text() const {
  if (places_ == 0) return digits_;
  return digits_.substr(0, digits_.size() - places_) + '.' + digits_.substr(digits_.size() - places_);
}

}  // namespace base
