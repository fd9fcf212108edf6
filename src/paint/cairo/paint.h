// Plays a display list into pixels with cairo and pango, and measures type with the same fonts.
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "base/result.h"
#include "list/list.h"
#include "list/measure.h"

namespace paint {

/// What lies under all that is drawn: paper, or nothing, so that a picture can be laid over another.
enum class Ground { white, clear };

struct Pixels {
  int width = 0, height = 0;
  bool grey = false;                ///< one byte a pixel, else three (r, g, b), or four
  std::vector<std::uint8_t> bytes;  ///< rows from the top, no padding
  bool clear = false;               ///< four bytes a pixel: r, g, b as they are without the ground, and how much of it they cover
  int channels() const { return clear ? 4 : grey ? 1 : 3; }
};

/// The fonts all pages use: one family (Inter), a second (Noto Sans) for letters the first lacks; found by file, never through the system's
/// font set-up, so that the same packages draw the same bytes everywhere. Not safe to share between threads: one each.
class Type : public list::Measure {
 public:
  static base::Result<std::unique_ptr<Type>> open();
  ~Type() override;
  list::TypeSize measure(std::string_view text, list::TypeStyle style) const override;
  struct Inside;
  const Inside& inside() const { return *inside_; }

 private:
  explicit Type(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

/// The page at so many dots per inch (72..1200); width and height are mm * dpi / 25.4, rounded. On white it is grey where every colour is a
/// grey, so that nothing is lost. A Trouble: another density, a side of no dots or more than 32767, more than 400 million dots, an item
/// with a place or measure beyond ten metres or not a number, no memory.
base::Result<Pixels> raster(const list::List& list, const Type& type, double dpi, Ground ground = Ground::white);

struct PngText {
  std::string keyword, text;  ///< Latin-1 keyword of 1 to 79 letters; text in UTF-8, where it is not Latin-1 it goes into iTXt
};
/// How the pixels are packed: small for what is sent and kept, by libdeflate; quick for pictures by the hundred, by ISA-L, a fifth larger.
/// Small ones are the same bytes everywhere; quick ones on every machine of one kind of processor.
enum class Packing { small, quick };

/// A PNG file in memory: stb_image_write with the packing's library, pHYs of the dpi, text chunks.
base::Result<std::vector<std::uint8_t>> png(const Pixels& pixels, double dpi, std::span<const PngText> texts,
                                            Packing packing = Packing::small);

}  // namespace paint
