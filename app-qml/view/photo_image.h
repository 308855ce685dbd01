#pragma once

#include <QImage>
#include <QSize>

#include <functional>

#include "core/base/bytes.h"
#include "core/base/id.h"
#include "core/base/outcome.h"

// Pictures that come from outside (a camera's file, another tablet) as images, within bounds: JPEG and PNG only, at most 64 megapixels and
// 256 MiB while they are decoded.

namespace weavelog {
class ContentFiles;
}

// As large as fits into `box`, never larger than it is, turned as its camera was held. Faults: malformed (no picture, damaged), bad_input (too large).
[[nodiscard]] weavelog::Outcome<QImage> decodedPhoto(weavelog::ByteView bytes, QSize box);

// JPEG of quality 85, at most 2048 pixels on its long side, made anew out of its pixels alone: nothing that a camera wrote beside them (place, time,
// owner, a small copy) is in it. Faults as above.
[[nodiscard]] weavelog::Outcome<weavelog::Bytes> cleanPhoto(weavelog::ByteView bytes);

// Reads those that are kept by book and hash, small enough for paper; an empty image where one is not held or damaged. `files` must outlive it.
[[nodiscard]] std::function<QImage(const weavelog::BookId&, const weavelog::Bytes&)> heldPhotos(weavelog::ContentFiles& files);

// The same of what a camera sees. Faults: malformed (there is none).
[[nodiscard]] weavelog::Outcome<weavelog::Bytes> keptPhoto(QImage image);
