#include "paint/cairo/pdf_finish.h"

#include <fmt/core.h>

#include <exception>

#define POINTERHOLDER_TRANSITION 4  // the library's own way to say: plain std::shared_ptr
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFWriter.hh>

namespace paint {
namespace {

void set_facts(QPDF& pdf, const PdfFacts& facts) {
  QPDFObjectHandle root = pdf.getRoot();
  root.replaceKey("/Lang", QPDFObjectHandle::newString(facts.language));
  QPDFObjectHandle viewer = QPDFObjectHandle::newDictionary();
  viewer.replaceKey("/DisplayDocTitle", QPDFObjectHandle::newBool(true));
  if (facts.duplex == Duplex::short_edge) viewer.replaceKey("/Duplex", QPDFObjectHandle::newName("/DuplexFlipShortEdge"));
  root.replaceKey("/ViewerPreferences", viewer);
  QPDFObjectHandle info = pdf.getTrailer().getKey("/Info");
  if (info.isDictionary()) info.removeKey("/CreationDate");
}

}  // namespace

base::Result<std::vector<std::uint8_t>> finish_pdf(const std::vector<std::uint8_t>& file, const PdfFacts& facts) {
  try {
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.processMemoryFile("page", reinterpret_cast<const char*>(file.data()), file.size());
    set_facts(pdf, facts);
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    writer.setDeterministicID(true);
    writer.setObjectStreamMode(qpdf_o_generate);
    writer.write();
    const auto buffer = writer.getBufferSharedPointer();
    return std::vector<std::uint8_t>(buffer->getBuffer(), buffer->getBuffer() + buffer->getSize());
  } catch (const std::exception& error) {
    return base::trouble(base::TroubleKind::output, fmt::format("the PDF cannot be made: {}", error.what()));
  }
}

}  // namespace paint
