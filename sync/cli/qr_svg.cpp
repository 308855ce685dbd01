#include "sync/cli/qr_svg.h"

#include <qrcodegen/qrcodegen.hpp>

namespace weavelog::cli {

Outcome<QrDrawing> qr_svg(const std::string& text, int most) {
  try {
    const auto segments = qrcodegen::QrSegment::makeSegments(text.c_str());
    const auto code = qrcodegen::QrCode::encodeSegments(segments, qrcodegen::QrCode::Ecc::MEDIUM, 1, most, -1, false);
    const std::string side = std::to_string(code.getSize() + 8);
    QrDrawing out;
    out.version = code.getVersion();
    out.svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + side + " " + side +
              "\" shape-rendering=\"crispEdges\">\n<rect width=\"" + side + "\" height=\"" + side +
              "\" fill=\"#ffffff\"/>\n" +
              "<path fill=\"#000000\" d=\"";
    for (int y = 0; y < code.getSize(); ++y)
      for (int x = 0; x < code.getSize();) {
        int run = 0;
        while (x + run < code.getSize() && code.getModule(x + run, y)) ++run;
        if (run > 0)
          out.svg += "M" + std::to_string(x + 4) + " " + std::to_string(y + 4) + "h" + std::to_string(run) + "v1h-" + std::to_string(run) + "z";
        x += run + 1;
      }
    out.svg += "\"/>\n</svg>\n";
    return out;
  } catch (const qrcodegen::data_too_long&) {
    return fail(FaultCode::bad_input, "the text fits no code of version " + std::to_string(most), "QR code", "");
  }
}

}  // namespace weavelog::cli
