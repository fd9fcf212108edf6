// Several pictures of one size as one that moves: PNG with the chunks acTL, fcTL and fdAT (PNG specification, third edition,
// chapter 11.3.6). A program that knows no moving pictures shows the first.
#pragma once

#include <cstdint>
#include <vector>

#include "base/result.h"

namespace paint {

/// Puts frames together one after another, so that only what is packed is kept.
class MovingPng {
 public:
  /// `png`: a file as paint::png makes it; all have one size and one kind of colour. `seconds`: up to 655, in hundredths.
  base::Result<void> add(const std::vector<std::uint8_t>& png, double seconds);
  /// The whole file; the pictures begin again and again.
  std::vector<std::uint8_t> file() const;

 private:
  struct Frame {
    std::vector<std::uint8_t> packed;
    int hundredths = 100;
  };
  std::vector<std::uint8_t> before_;  ///< signature, head and what else stands before the pixels
  std::vector<std::uint8_t> head_;    ///< data of IHDR
  std::vector<Frame> frames_;
};

}  // namespace paint
