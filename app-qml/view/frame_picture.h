#pragma once

#include <QImage>

class QVideoFrame;

// What a camera gives, as images; null for a format that cameras do not give, or a frame that can't be read. Upright as the camera was held.
// QVideoFrame::toImage() of Qt 6.4 draws with OpenGL and crashes where there is none.

// The light alone: of which codes are read.
[[nodiscard]] QImage greyPicture(QVideoFrame frame);
// In colour: by ITU-R BT.601, or BT.709 where the frame says so.
[[nodiscard]] QImage colourPicture(QVideoFrame frame);
