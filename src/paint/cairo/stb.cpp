// stb_image_write with the three places filled that it leaves open: libdeflate compresses and checks sums, and large memory comes in large pages.
#include "paint/cairo/stb.h"

#include <libdeflate.h>

#include <cstring>

#include "paint/cairo/large_pages.h"

namespace {

unsigned char* deflate_rows(unsigned char* data, int length, int* out_length, int level);
void* allocate(std::size_t size) {
  void* memory = std::malloc(size);
  if (memory) paint::ask_large_pages(memory, size);
  return memory;
}
unsigned int checksum(const unsigned char* data, int length) { return libdeflate_crc32(0, data, static_cast<std::size_t>(length)); }

}  // namespace

#define STB_IMAGE_WRITE_STATIC
#define STB_IMAGE_WRITE_IMPLEMENTATION
#define STBI_WRITE_NO_STDIO
#define STBIW_MALLOC(size) allocate(static_cast<std::size_t>(size))
#define STBIW_REALLOC(memory, size) std::realloc(memory, static_cast<std::size_t>(size))
#define STBIW_FREE(memory) std::free(memory)
#define STBIW_ZLIB_COMPRESS deflate_rows
#define STBIW_CRC32 checksum
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wunused-function"
#pragma GCC diagnostic ignored "-Wmissing-field-initializers"
#include <stb/stb_image_write.h>
#pragma GCC diagnostic pop

namespace {

unsigned char* deflate_rows(unsigned char* data, int length, int* out_length, int level) {
  const paint::Owned<libdeflate_compressor, libdeflate_free_compressor> compressor(libdeflate_alloc_compressor(level));
  if (!compressor) return nullptr;
  const auto size = static_cast<std::size_t>(length);
  const std::size_t room = libdeflate_zlib_compress_bound(compressor.get(), size);
  auto* out = static_cast<unsigned char*>(std::malloc(room));
  if (!out) return nullptr;
  *out_length = static_cast<int>(libdeflate_zlib_compress(compressor.get(), data, size, out, room));
  return out;
}

/// stb keeps its settings in variables: they are set once, before the first picture, and only read afterwards. No filter: on drawings with
/// large flat areas the plain rows compress best, and trying filters takes longer than all the rest. Level 5: on full pages an eighth smaller
/// than libpng's level 6 in colour and a thirtieth in grey; level 6 would take a seventh longer for three hundredths less.
bool set_up_once() {
  static const bool done = [] {
    stbi_write_force_png_filter = 0;
    stbi_write_png_compression_level = 5;
    return true;
  }();
  return done;
}

}  // namespace

namespace paint {

PngBytes stb_png(const std::uint8_t* pixels, int width, int height, int channels) {
  set_up_once();
  int length = 0;
  unsigned char* file = stbi_write_png_to_mem(pixels, width * channels, width, height, channels, &length);
  return {Owned<std::uint8_t, std::free>(file), static_cast<std::size_t>(length)};
}

}  // namespace paint
