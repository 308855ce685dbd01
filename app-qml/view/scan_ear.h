#pragma once

#include <QString>

#include <optional>

// Hears a scanner that types (a keyboard to the device) among the keys that a person presses: the keys of a code, and Enter.
//
// A code that reads as one is believed however slowly it came; what only looks like one, damaged or typed for another keyboard, only
// if it came as fast as no person types. A player card, some hundred characters with spaces in it, is told as soon as its first letters came that
// fast: the rest of it is not for whatever has the keyboard.
class ScanEar {
 public:
  // A character that was typed, and when, in milliseconds of a clock that only goes on. True if it is a card's: nobody else may have it.
  bool typed(const QString& text, qint64 at);
  // A card is being typed.
  [[nodiscard]] bool inCard() const { return card_; }
  // Enter: the code that was typed just before it, if it was one.
  [[nodiscard]] std::optional<QString> entered(qint64 at);
  // The keyboard went elsewhere in between.
  void forget() {
    heard_.clear();
    card_ = false;
  }

 private:
  static constexpr qint64 pause = 1000;    // a code's keys never lie further apart
  static constexpr qint64 machine = 60;    // nor a machine's
  static constexpr qsizetype most = 64;
  static constexpr qsizetype mostOfCard = 4096;

  QString heard_;
  bool card_ = false;      // it begins with what cards begin with
  qint64 last_ = 0;
  qsizetype fastFrom_ = 0;  // from here on every key came at the pace of a machine
};
