// Printing through stand-ins for CUPS' commands: programs of these names in a folder of the test.

#include <QElapsedTimer>
#include <QFile>
#include <QSignalSpy>

#include "app-qml/view/print_model.h"
#include "tests/app/paper_reading.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// Commands of the system as far as the path leads; what was there before comes back at the end.
class Commands {
 public:
  explicit Commands(const std::filesystem::path& folder) : folder_(QString::fromStdString(folder.string())), path_(qgetenv("PATH")) {
    QDir().mkpath(folder_);
    qputenv("PATH", folder_.toUtf8());
  }
  ~Commands() { qputenv("PATH", path_); }
  Commands(const Commands&) = delete;
  Commands& operator=(const Commands&) = delete;

  void put(const QString& name, const QByteArray& script) const {
    QFile file(folder_ + u'/' + name);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("#!/bin/sh\nPATH=" + path_ + "\n" + script);
    file.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
  }
  [[nodiscard]] QString read(const QString& name) const {
    QFile file(folder_ + u'/' + name);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
  }
  [[nodiscard]] QByteArray folder() const { return folder_.toUtf8(); }

 private:
  QString folder_;
  QByteArray path_;
};

constexpr const char* kTwoPrinters = "echo 'desk-labels'; echo 'office'; echo 'system default destination: office'\n";

struct PrintRoom : PaperRoom {
  MadeJob job;
  std::unique_ptr<Commands> commands;

  PrintRoom() {
    job = receive(addPlayer(named("Okafor", "Ada")), day_wish(), 41);
    commands = std::make_unique<Commands>(folder / "bin");
  }
  [[nodiscard]] std::unique_ptr<PrintModel> model() {
    auto out = std::make_unique<PrintModel>(device->work(), *settings);
    out->setFolder(QString::fromStdString((folder / "papers").string()));
    out->showJob(hex(job.book), hex(job.job));
    REQUIRE(waitUntil([&] { return !out->looking(); }));
    return out;
  }
};

}  // namespace

TEST_CASE("a tag goes to the printer that is chosen, at its true size") {
  PrintRoom room;
  room.commands->put("lpstat", kTwoPrinters);
  room.commands->put("lp", "echo \"$@\" >" + room.commands->folder() + "/asked\nfor last; do :; done\ncp \"$last\" " + room.commands->folder() +
                               "/printed.pdf\necho 'request id is desk-labels-1 (1 file(s))'\n");
  const auto model = room.model();
  CHECK(model->printers() == QStringList{"desk-labels", "office"});
  CHECK(model->printer() == "office");
  model->setPrinter("desk-labels");
  model->print();
  CHECK(model->printing());
  REQUIRE(waitUntil([&] { return model->result() != PrintModel::Nothing; }));
  CHECK(model->result() == PrintModel::Printed);
  CHECK(model->told() == "desk-labels");
  CHECK(room.commands->read("asked").contains("-d desk-labels"));
  CHECK(room.commands->read("asked").contains("media=Custom.62x100mm"));
  CHECK_FALSE(model->printing());
  // It is the printer of next time, and tags of a drop-off go there by one tap.
  QFile::remove(QString::fromUtf8(room.commands->folder()) + "/asked");
  const auto again = room.model();
  CHECK(again->printer() == "desk-labels");
  again->showDropOff(hex(room.job.book), true);
  REQUIRE(waitUntil([&] { return again->result() == PrintModel::Printed; }));
  CHECK(room.commands->read("asked").contains("desk-labels"));
  const QString printed = QString::fromUtf8(room.commands->folder()) + "/printed.pdf";
  room.commands.reset();
  CHECK(lettersIn(printed).contains("Okafor"));
}

TEST_CASE("nothing is printed by one tap before a printer was used, nor when it is gone") {
  PrintRoom room;
  room.commands->put("lpstat", kTwoPrinters);
  room.commands->put("lp", "touch " + room.commands->folder() + "/asked\n");
  const auto model = room.model();
  room.settings->setPrinter("sold-since");
  model->showDropOff(hex(room.job.book), true);
  REQUIRE(waitUntil([&] { return !model->looking(); }));
  CHECK_FALSE(model->printing());
  CHECK(model->result() == PrintModel::Nothing);
}

TEST_CASE("without printers or without a printing system that is said, and the PDF can be saved") {
  PrintRoom room;
  const auto without = room.model();
  CHECK(without->printers().isEmpty());
  without->print();
  CHECK(without->result() == PrintModel::Nothing);
  without->savePdf();
  CHECK(without->result() == PrintModel::Saved);
  const QString first = without->told();
  CHECK(QFile::exists(first));
  without->savePdf();
  CHECK(without->told() != first);  // what was saved stays
  room.commands->put("lpstat", "echo 'lpstat: No destinations added.' >&2; exit 1\n");
  CHECK(room.model()->printers().isEmpty());
  without->setFolder("/proc/no-such");
  without->savePdf();
  CHECK(without->result() == PrintModel::NotSaved);
}

TEST_CASE("what the printing system refuses is told in its own words") {
  PrintRoom room;
  room.commands->put("lpstat", kTwoPrinters);
  room.commands->put("lp", "echo 'lp: The printer is not accepting jobs.' >&2; exit 1\n");
  const auto model = room.model();
  model->print();
  REQUIRE(waitUntil([&] { return model->result() != PrintModel::Nothing; }));
  CHECK(model->result() == PrintModel::Refused);
  CHECK(model->told() == "lp: The printer is not accepting jobs.");
  CHECK(room.settings->printer().isEmpty());
}

TEST_CASE("nobody waits for a slow printer") {
  PrintRoom room;
  room.commands->put("lpstat", kTwoPrinters);
  room.commands->put("lp", "sleep 3\n");
  const auto model = room.model();
  QElapsedTimer since;
  since.start();
  model->print();
  CHECK(since.elapsed() < 2500);
  CHECK(model->printing());
  model->print();  // one at a time
  REQUIRE(waitUntil([&] { return model->result() == PrintModel::Printed; }));
}

TEST_CASE("the last choice of size is remembered for each kind of paper") {
  PrintRoom room;
  const auto model = room.model();
  CHECK(model->size() == "62x100");
  model->setSize("62x29");
  CHECK(model->pageSize(0) == QSizeF(62, 29));
  model->setPaper("bag-tags");
  CHECK(model->size() == "62x29");
  model->setPaper("statement");
  CHECK(model->size() == "a4");
  model->setSize("80");
  model->setSize("5 x 7");
  CHECK(model->size() == "80");
  const auto again = room.model();
  CHECK(again->size() == "62x29");
  again->setPaper("statement");
  CHECK(again->size() == "80");
  again->showRoom();
  CHECK(again->paper() == "work-list");
  again->setPaper("labels");
  CHECK(again->labels() == 24);
  again->setStart(99);
  CHECK(again->start() == 24);
  CHECK(again->pages() == 1);
  CHECK(again->pageText(0).contains("Okafor"));
}
