#pragma once
// A text as a QR code (ISO/IEC 18004) in an SVG file.

#include <string>

#include "core/base/outcome.h"

namespace weavelog::cli {

struct QrDrawing {
  std::string svg;  ///< with the quiet zone of four modules, a module a unit
  int version = 0;  ///< 1 to 40
};
/// At error level M. Faults: bad_input (more than a code of `most` holds).
[[nodiscard]] Outcome<QrDrawing> qr_svg(const std::string& text, int most = 25);

}  // namespace weavelog::cli
