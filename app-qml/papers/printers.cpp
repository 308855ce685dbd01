#include "app-qml/papers/printers.h"

#include <QProcess>
#include <QTimer>
#include <cmath>

namespace {

constexpr int lookTime = 10'000;  // ms
constexpr int printTime = 60'000;
constexpr int notThere = -1;
constexpr int tooLong = -2;

QString mediaOf(const QSizeF& page) {
  if (page == QSizeF(210, 297)) return QStringLiteral("media=A4");
  return QStringLiteral("media=Custom.%1x%2mm").arg(std::lround(page.width())).arg(std::lround(page.height()));
}

}  // namespace

void Printers::run(const QString& program, const QStringList& arguments, int timeout, std::function<void(int, QString, QString)> ended) {
  auto* process = new QProcess(this);
  auto environment = QProcessEnvironment::systemEnvironment();
  environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8"));
  process->setProcessEnvironment(environment);
  process->setStandardInputFile(QProcess::nullDevice());
  auto* limit = new QTimer(process);
  limit->setSingleShot(true);
  connect(limit, &QTimer::timeout, process, [process] {
    process->setProperty("tooLong", true);
    process->kill();
  });
  connect(process, &QProcess::errorOccurred, this, [process, ended](QProcess::ProcessError error) {
    if (error != QProcess::FailedToStart) return;
    process->deleteLater();
    ended(notThere, {}, {});
  });
  connect(process, &QProcess::finished, this, [process, ended](int code, QProcess::ExitStatus status) {
    process->deleteLater();
    const int outcome = process->property("tooLong").toBool() ? tooLong : status == QProcess::NormalExit ? code : 1;
    ended(outcome, QString::fromUtf8(process->readAllStandardOutput()), QString::fromUtf8(process->readAllStandardError()).trimmed());
  });
  limit->start(timeout);
  process->start(program, arguments);
}

void Printers::look() {
  if (state_ == State::looking) return;
  state_ = State::looking;
  emit changed();
  run(QStringLiteral("lpstat"), {QStringLiteral("-e"), QStringLiteral("-d")}, lookTime, [this](int code, const QString& out, const QString&) {
    names_.clear();
    usual_.clear();
    // Names of printers have no spaces; the line that names the usual one is a sentence.
    const auto lines = out.split(u'\n', Qt::SkipEmptyParts);
    for (const QString& line : lines)
      if (!line.contains(u' ')) names_.append(line.trimmed());
    for (const QString& line : lines)
      if (line.contains(u' ') && names_.contains(line.section(u' ', -1))) usual_ = line.section(u' ', -1);
    names_.removeDuplicates();
    state_ = code == notThere ? State::noPrinting : names_.isEmpty() ? State::none : State::found;
    emit changed();
  });
}

bool Printers::print(const Paper& paper, const QString& printer) {
  if (printing() || paper.pages.empty() || printer.isEmpty()) return false;
  folder_ = std::make_unique<QTemporaryDir>();
  const QString file = folder_->filePath(QStringLiteral("paper.pdf"));
  emit changed();
  if (const auto written = writePdf(paper, file); !folder_->isValid() || !written) {
    end(Trouble::notWritten, written ? folder_->errorString() : QString::fromStdString(written.error().what));
    return true;
  }
  // As large as it was laid out: a label that is scaled to fit is no label.
  const QStringList arguments{QStringLiteral("-d"), printer,
                              QStringLiteral("-t"), paper.title,
                              QStringLiteral("-o"), mediaOf(paper.pages.front().size()),
                              QStringLiteral("-o"), QStringLiteral("print-scaling=none"),
                              QStringLiteral("--"), file};
  run(QStringLiteral("lp"), arguments, printTime, [this, printer](int code, const QString&, const QString& said) {
    if (code == 0) {
      folder_.reset();
      emit changed();
      emit printed(printer);
      return;
    }
    end(code == notThere ? Trouble::noPrinting : code == tooLong ? Trouble::silent : Trouble::refused, said);
  });
  return true;
}

void Printers::end(Trouble trouble, const QString& said) {
  folder_.reset();
  emit changed();
  emit failed(trouble, said);
}
