// What cairo's PDF lacks, put in with libqpdf: language, the title in the title bar, how it is printed; and no clock in it.
#pragma once

#include <cstdint>
#include <vector>

#include "base/result.h"
#include "paint/cairo/pdf.h"

namespace paint {

/// The same pages with the facts in the catalogue, without dates, with an identifier made from the content alone.
base::Result<std::vector<std::uint8_t>> finish_pdf(const std::vector<std::uint8_t>& file, const PdfFacts& facts);

}  // namespace paint
