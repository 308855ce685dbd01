#include "app-qml/ui/theme/colours.h"

#include <array>
#include <cmath>

const Colours& lightColours() {
  static const Colours table{
      .ground = QColor(0xEF, 0xE8, 0xDB),
      .surface = QColor(0xFB, 0xF7, 0xEF),
      .raised = QColor(0xFF, 0xFD, 0xF8),
      .field = QColor(0xFF, 0xFF, 0xFF),
      .ink = QColor(0x21, 0x1C, 0x17),
      .quietInk = QColor(0x5C, 0x53, 0x48),
      .line = QColor(0xD9, 0xCE, 0xBC),
      .controlLine = QColor(0x7D, 0x71, 0x62),
      .focus = QColor(0xA8, 0x3E, 0x0A),
      .action = QColor(0x0C, 0x4A, 0x50),
      .actionPressed = QColor(0x08, 0x35, 0x3A),
      .onAction = QColor(0xFF, 0xFD, 0xF8),
      .chosenGround = QColor(0xCF, 0xE3, 0xE1),
      .onChosen = QColor(0x08, 0x3B, 0x41),
      .agreed = QColor(0x3A, 0x57, 0x12),
      .agreedGround = QColor(0xE2, 0xEA, 0xCB),
      .attention = QColor(0x6E, 0x48, 0x00),
      .attentionGround = QColor(0xFA, 0xE6, 0xB4),
      .danger = QColor(0x9A, 0x1F, 0x1A),
      .dangerGround = QColor(0xF8, 0xDB, 0xD3),
      .dangerAction = QColor(0xA3, 0x24, 0x1C),
      .dangerActionPressed = QColor(0x7C, 0x17, 0x12),
      .onDangerAction = QColor(0xFF, 0xFD, 0xF8),
      .rush = QColor(0xB0, 0x3F, 0x07),
      .onRush = QColor(0xFF, 0xFF, 0xFF),
      .disabledGround = QColor(0xE3, 0xDB, 0xCD),
      .disabledInk = QColor(0x6B, 0x61, 0x55),
      .toast = QColor(0x2B, 0x25, 0x1F),
      .onToast = QColor(0xFB, 0xF7, 0xEF),
      .scrim = QColor(0x21, 0x1C, 0x17, 0x99),
      .codeDark = QColor(0x00, 0x00, 0x00),
      .codeLight = QColor(0xFF, 0xFF, 0xFF),
  };
  return table;
}

const Colours& darkColours() {
  static const Colours table{
      .ground = QColor(0x15, 0x12, 0x10),
      .surface = QColor(0x20, 0x1C, 0x19),
      .raised = QColor(0x2A, 0x25, 0x21),
      .field = QColor(0x17, 0x14, 0x12),
      .ink = QColor(0xF4, 0xEC, 0xE0),
      .quietInk = QColor(0xBD, 0xB2, 0xA3),
      .line = QColor(0x40, 0x39, 0x32),
      .controlLine = QColor(0x94, 0x89, 0x7B),
      .focus = QColor(0xFF, 0xB2, 0x7D),
      .action = QColor(0x86, 0xCD, 0xCF),
      .actionPressed = QColor(0xA9, 0xE2, 0xE3),
      .onAction = QColor(0x05, 0x26, 0x2A),
      .chosenGround = QColor(0x17, 0x41, 0x46),
      .onChosen = QColor(0xD3, 0xF1, 0xF0),
      .agreed = QColor(0xBB, 0xD7, 0x88),
      .agreedGround = QColor(0x2B, 0x36, 0x16),
      .attention = QColor(0xF3, 0xC7, 0x66),
      .attentionGround = QColor(0x40, 0x31, 0x0D),
      .danger = QColor(0xFF, 0xA5, 0x97),
      .dangerGround = QColor(0x4A, 0x1C, 0x17),
      .dangerAction = QColor(0xF2, 0x8B, 0x7C),
      .dangerActionPressed = QColor(0xFF, 0xB0, 0xA4),
      .onDangerAction = QColor(0x35, 0x08, 0x05),
      .rush = QColor(0xFF, 0xA8, 0x66),
      .onRush = QColor(0x36, 0x15, 0x00),
      .disabledGround = QColor(0x2F, 0x2A, 0x26),
      .disabledInk = QColor(0x9C, 0x91, 0x84),
      .toast = QColor(0xF4, 0xEC, 0xE0),
      .onToast = QColor(0x21, 0x1C, 0x17),
      .scrim = QColor(0x00, 0x00, 0x00, 0xB0),
      .codeDark = QColor(0x00, 0x00, 0x00),
      .codeLight = QColor(0xFF, 0xFF, 0xFF),
  };
  return table;
}

double relativeLuminance(const QColor& colour) {
  const auto linear = [](int channel) {
    const double value = channel / 255.0;
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) + 0.0722 * linear(colour.blue());
}

double contrastRatio(const QColor& one, const QColor& other) {
  const double a = relativeLuminance(one);
  const double b = relativeLuminance(other);
  return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

std::span<const ColourPair> colourPairs() {
  constexpr double text = 4.5;
  constexpr double part = 3.0;
  static constexpr std::array pairs{
      ColourPair{"ink", "ground", text},
      ColourPair{"ink", "surface", text},
      ColourPair{"ink", "raised", text},
      ColourPair{"ink", "field", text},
      ColourPair{"quietInk", "ground", text},
      ColourPair{"quietInk", "surface", text},
      ColourPair{"quietInk", "raised", text},
      ColourPair{"quietInk", "field", text},
      ColourPair{"action", "ground", text},
      ColourPair{"action", "surface", text},
      ColourPair{"action", "raised", text},
      ColourPair{"action", "field", text},
      ColourPair{"onAction", "action", text},
      ColourPair{"onAction", "actionPressed", text},
      ColourPair{"onChosen", "chosenGround", text},
      ColourPair{"agreed", "ground", text},
      ColourPair{"agreed", "surface", text},
      ColourPair{"agreed", "raised", text},
      ColourPair{"agreed", "agreedGround", text},
      ColourPair{"attention", "ground", text},
      ColourPair{"attention", "surface", text},
      ColourPair{"attention", "raised", text},
      ColourPair{"attention", "attentionGround", text},
      ColourPair{"danger", "ground", text},
      ColourPair{"danger", "surface", text},
      ColourPair{"danger", "raised", text},
      ColourPair{"danger", "dangerGround", text},
      ColourPair{"ink", "agreedGround", text},
      ColourPair{"ink", "attentionGround", text},
      ColourPair{"ink", "dangerGround", text},
      ColourPair{"ink", "chosenGround", text},
      ColourPair{"onDangerAction", "dangerAction", text},
      ColourPair{"onDangerAction", "dangerActionPressed", text},
      ColourPair{"onRush", "rush", text},
      ColourPair{"rush", "surface", text},
      ColourPair{"rush", "raised", text},
      ColourPair{"onToast", "toast", text},
      ColourPair{"codeDark", "codeLight", text},
      ColourPair{"controlLine", "ground", part},
      ColourPair{"controlLine", "surface", part},
      ColourPair{"controlLine", "raised", part},
      ColourPair{"controlLine", "field", part},
      ColourPair{"focus", "ground", part},
      ColourPair{"focus", "surface", part},
      ColourPair{"focus", "raised", part},
      // WCAG asks nothing of what is switched off; it is read all the same, so it keeps the ratio of large
      // text.
      ColourPair{"disabledInk", "disabledGround", part},
      ColourPair{"disabledInk", "surface", part},
  };
  return pairs;
}
