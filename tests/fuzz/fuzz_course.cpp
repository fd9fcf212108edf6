// libFuzzer's way in. Run: fuzz_course -max_len=4096 -dict=course.dict NEW_CORPUS corpus
#include <cstdint>

#include "check_course.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzz::check_course({reinterpret_cast<const char*>(data), size});
  return 0;
}
