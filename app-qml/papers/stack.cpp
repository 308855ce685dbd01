#include "app-qml/papers/stack.h"

#include <algorithm>

namespace {

constexpr qreal line = 0.4;  // mm

}  // namespace

void Stack::addRule(PaperPage& page) {
  add(1.6, [&page](const QRectF& row) { page.fill({row.left(), row.center().y() - line / 2, row.width(), line}); });
}

void Stack::draw() const {
  qreal wanted = 0;
  for (const auto& part : parts_) wanted += part.height;
  // What has little on it does not blow that up to no use.
  const qreal scale = wanted > 0 ? std::min(box_.height() / wanted, 1.25) : 1;
  qreal y = box_.top();
  for (const auto& part : parts_) {
    part.draw({box_.left(), y, box_.width(), part.height * scale});
    y += part.height * scale;
  }
}
