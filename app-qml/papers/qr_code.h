#pragma once

#include <QImage>

#include <string>
#include <vector>

// A text as a QR code (ISO/IEC 18004) of error level M, or a higher one where that needs no larger code.
inline constexpr int codeQuietZone = 4;  // modules, as the standard asks for

// Rows of modules without the quiet zone, true is dark. Empty for a text that no code can hold.
[[nodiscard]] std::vector<std::vector<bool>> codeModules(const std::string& text);
// As a picture, black on white with the quiet zone, each module the same whole number of dots; at least so many dots wide. Says of itself that
// it is `mm` wide, for programs that print it. Null for a text that no code can hold.
[[nodiscard]] QImage codePicture(const std::string& text, int least, qreal mm);
