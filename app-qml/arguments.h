#pragma once

#include <QSize>
#include <QString>

#include <cstdint>
#include <string>
#include <utility>
#include <variant>
#include <vector>

// What the command line asked of the app.
struct Arguments {
  bool gallery = false;   // every part in every state instead of the app
  bool demo = false;      // an invented event in a folder that goes with the app
  bool timing = false;    // one line on standard error with the time to the first frame
  QSize size{1280, 800};  // of the window, in pixels
  QString grabFile;       // save the first page as PNG and leave; empty: stay
  QString theme;          // light or dark for this run only; empty: as in the settings
  QString language;       // en, fr, es or de for this run only; empty: as in the settings
  QString dataFolder;     // where the device's ledger and key are; empty: the system's place for it
  QString page;           // a page of the desk to begin with, such as "confirm:Okonjo"; empty: its first
  QString place;          // the place that opens; empty: the desk
  QString paper;          // write a paper as PDF and leave: "tags", "work-list", ...; empty: no paper
  QString roll;           // what it is printed on: "62", "80", "62x29", "a4"; empty: the usual
  QString outFile;        // the PDF, or the picture of one card
  std::vector<std::pair<std::int64_t, std::int64_t>> tags;  // tag numbers, from and to; empty: of all open rackets
  std::vector<QString> players;  // whose statement it is, or whose tags: one; of cards as many as are wanted
  QString country;        // cards of everybody of it; empty: of those named
  QString pictureFile;    // say what the codes on this picture hold and leave; empty: no picture
  int start = 1;          // first position on a sheet of labels
  bool byTag = false;     // the pick-up list by tag number
};

// Where the process ends before a window opens: help (code 0), or one line about a wrong argument (code 2).
struct EarlyEnd {
  int code = 0;
  std::string text;
};

[[nodiscard]] std::variant<Arguments, EarlyEnd> readArguments(int argc, const char* const* argv);
