#include "app-qml/ui/theme/theme.h"

#include <algorithm>
#include <cmath>

#include "app-qml/view/provided.h"

Theme* Theme::create(QQmlEngine* engine, QJSEngine*) {
  if (auto* theme = provided<Theme>(engine)) return theme;
  return new Theme(nullptr);  // the engine takes it over
}

void Theme::setRightToLeft(bool rightToLeft) {
  if (rightToLeft_ == rightToLeft) return;
  rightToLeft_ = rightToLeft;
  emit rightToLeftChanged();
}

void Theme::setDark(bool dark) {
  if (dark_ == dark) return;
  dark_ = dark;
  emit darkChanged();
}

void Theme::setTextScale(double scale) {
  const double wanted = std::clamp(scale, leastTextScale, mostTextScale);
  if (std::abs(wanted - textScale_) < 1e-9) return;
  textScale_ = wanted;
  emit textScaleChanged();
}

TypeSizes Theme::type() const {
  const auto scaled = [this](double size) { return static_cast<int>(std::lround(size * textScale_)); };
  return {.caption = scaled(14),
          .body = scaled(17),
          .title = scaled(20),
          .heading = scaled(28),
          .figure = scaled(36),
          .giant = scaled(168)};
}

QFont themeFont() {
  QFont font;
  font.setFamilies({QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans Arabic"),
                    QStringLiteral("Noto Sans Hebrew"), QStringLiteral("Noto Sans Thai"),
                    QStringLiteral("Noto Sans Devanagari"), QStringLiteral("WenQuanYi Micro Hei")});
  font.setPixelSize(17);
  return font;
}
