#pragma once

#include <QObject>
#include <QStringList>
#include <QTemporaryDir>

#include <functional>
#include <memory>

#include "app-qml/papers/paper.h"

// The printers of the system, through CUPS' commands lpstat and lp. Everything runs beside: nothing here waits for a printer.
class Printers : public QObject {
  Q_OBJECT

 public:
  enum class State { unknown, looking, found, none, noPrinting };
  enum class Trouble { noPrinting, notWritten, refused, silent };

  explicit Printers(QObject* parent = nullptr) : QObject(parent) {}

  // Asks for what is there; changed() tells when it is known.
  void look();
  // Hands a paper over to a printer of that name; printed() or failed() tells how that went. One at a time: false while another is
  // on its way, or for a paper without a page.
  bool print(const Paper& paper, const QString& printer);

  [[nodiscard]] State state() const { return state_; }
  [[nodiscard]] const QStringList& names() const { return names_; }
  // What the system prints on unless another is named; "" for none.
  [[nodiscard]] const QString& usual() const { return usual_; }
  [[nodiscard]] bool printing() const { return folder_ != nullptr; }

 signals:
  void changed();
  void printed(const QString& printer);
  // `said` is what the printing system said itself; it may be empty.
  void failed(Printers::Trouble trouble, const QString& said);

 private:
  // Runs a command; `ended` gets its exit code (-1: it is not there, -2: it did not end in time) and what it said.
  void run(const QString& program, const QStringList& arguments, int timeout, std::function<void(int, QString, QString)> ended);
  void end(Trouble trouble, const QString& said);

  State state_ = State::unknown;
  QStringList names_;
  QString usual_;
  std::unique_ptr<QTemporaryDir> folder_;  // holds the file while it is handed over
};
