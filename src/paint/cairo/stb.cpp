// stb_image_write with the three places filled that it leaves open: libdeflate or ISA-L compress, libdeflate checks sums, and large memory
// comes in large pages.
#include "paint/cairo/stb.h"

#include <isa-l/igzip_lib.h>
#include <libdeflate.h>

#include <algorithm>
#include <cstring>
#include <vector>

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

thread_local paint::Packing packing_now = paint::Packing::small;

/// 0: no memory.
std::size_t pack_small(std::span<const unsigned char> rows, int level, paint::Owned<unsigned char, std::free>& out) {
  const paint::Owned<libdeflate_compressor, libdeflate_free_compressor> compressor(libdeflate_alloc_compressor(level));
  if (!compressor) return 0;
  const std::size_t room = libdeflate_zlib_compress_bound(compressor.get(), rows.size());
  out.reset(static_cast<unsigned char*>(std::malloc(room)));
  return out ? libdeflate_zlib_compress(compressor.get(), rows.data(), rows.size(), out.get(), room) : 0;
}

/// Takes all of `rows` into the stream.
bool pack_part(isal_zstream& stream, std::span<const unsigned char> rows, std::uint16_t flush, bool last) {
  stream.flush = flush;
  stream.end_of_stream = last;
  stream.next_in = const_cast<unsigned char*>(rows.data());  // only read
  stream.avail_in = static_cast<std::uint32_t>(rows.size());
  return isal_deflate(&stream) == COMP_OK && stream.avail_in == 0;
}

/// ISA-L looks at only a few bytes of each long stretch of equal ones: on flat pictures ten times as fast, and a fifth larger.
/// The first bytes are packed by themselves: level 1 of ISA-L 2.30, which begins in its fast loop, takes the second byte's place in its
/// table of what it has seen from the address of the stream, so that equal rows would be packed unequally now and then.
std::size_t pack_quick(std::span<const unsigned char> rows, paint::Owned<unsigned char, std::free>& out) {
  constexpr std::size_t wrapping = 1024;  // stored blocks of 64 kB have 5 bytes each, and head and end
  const std::size_t room = rows.size() + rows.size() / 4096 + wrapping, first = std::min<std::size_t>(rows.size(), 8);
  out.reset(static_cast<unsigned char*>(std::malloc(room)));
  const paint::Owned<unsigned char, std::free> level_memory(static_cast<unsigned char*>(std::malloc(ISAL_DEF_LVL1_DEFAULT)));
  if (!out || !level_memory) return 0;
  isal_zstream stream;
  isal_deflate_init(&stream);
  stream.level = 1;
  stream.level_buf = level_memory.get();
  stream.level_buf_size = ISAL_DEF_LVL1_DEFAULT;
  stream.gzip_flag = IGZIP_ZLIB;
  stream.next_out = out.get();
  stream.avail_out = static_cast<std::uint32_t>(room);
  const bool whole = pack_part(stream, rows.first(first), SYNC_FLUSH, false) && pack_part(stream, rows.subspan(first), NO_FLUSH, true);
  return whole && stream.internal_state.state == ZSTATE_END ? stream.total_out : 0;
}

unsigned char* deflate_rows(unsigned char* data, int length, int* out_length, int level) {
  const std::span<const unsigned char> rows(data, static_cast<std::size_t>(length));
  paint::Owned<unsigned char, std::free> out;
  const std::size_t packed = packing_now == paint::Packing::small ? pack_small(rows, level, out) : pack_quick(rows, out);
  *out_length = static_cast<int>(packed);
  return packed > 0 ? out.release() : nullptr;
}

/// stb keeps its settings in variables: they are set once, before the first picture, and only read afterwards. No filter: on drawings with
/// large flat areas the plain rows compress best, and trying filters takes longer than all the rest. Level 5: on full pages an eighth
/// smaller than libpng's level 6 in colour and a thirtieth in grey; level 6 would take a seventh longer for three hundredths less.
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

PngBytes stb_png(const std::uint8_t* pixels, int width, int height, int channels, Packing packing) {
  set_up_once();
  packing_now = packing;
  int length = 0;
  unsigned char* file = stbi_write_png_to_mem(pixels, width * channels, width, height, channels, &length);
  return {Owned<std::uint8_t, std::free>(file), static_cast<std::size_t>(length)};
}

}  // namespace paint
