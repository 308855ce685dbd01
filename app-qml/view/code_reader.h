#pragma once

#include <QImage>
#include <QStringList>

// Texts of all QR codes and Code 128 barcodes that are to be seen on a picture, in any orientation; none if there is none. A large picture
// is looked at in a smaller size. Any thread.
[[nodiscard]] QStringList codesOn(const QImage& picture);
