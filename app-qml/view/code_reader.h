#pragma once

#include <QImage>
#include <QStringList>

#include "core/base/outcome.h"

// Texts of all QR codes and Code 128 barcodes (of eight characters or more) that are to be seen on a picture, in any orientation; none if there is none. A picture whose longer side has more dots
// is looked at in that size. Any thread.
inline constexpr int usualLook = 1280;
[[nodiscard]] QStringList codesOn(const QImage& picture, int longestSide = usualLook);
// Those on a picture in a file, which is looked at in several sizes: a code on a photo of a table is small, one that was saved alone may have one dot a module. Faults:
// io (no file, or none that can be read), bad_input (no picture).
[[nodiscard]] weavelog::Outcome<QStringList> codesOnFile(const QString& file);
