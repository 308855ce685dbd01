// A hand at the real app, for tests that kill it while it acts: a plugin that Qt loads into any program which is told so by its environment
// (QT_PLUGIN_PATH, QT_QPA_GENERIC_PLUGINS=weavelog_hand:FILE). It asks the app's own view models for what a tap would ask them for, one line of
// the file after the other:
//
//   stage BOOK JOB STAGE      the racket goes on
//   person BOOK TEXT          the player's note
//   same BOOK TEXT            a drop-off with that note, the same as last time, read back and confirmed
//
// and says "did LINE" on standard output once the model has said that it is stored, or "not LINE", with the reason that the app gives.

#include <unistd.h>

#include <QFile>
#include <QGenericPlugin>
#include <QGuiApplication>
#include <QJsonDocument>
#include <QQmlEngine>
#include <QTimer>
#include <QVariantMap>
#include <QWindow>

namespace {

constexpr int kPauseMs = 3;

/// At once and in one write: the program may be killed after any instruction.
void say(const QByteArray& line) {
  const QByteArray whole = line + '\n';
  (void)!::write(STDOUT_FILENO, whole.constData(), static_cast<std::size_t>(whole.size()));
}

}  // namespace

class Hand : public QObject {
  Q_OBJECT

 public:
  explicit Hand(const QString& file) {
    QFile in(file);
    if (in.open(QIODevice::ReadOnly)) lines_ = in.readAll().split('\n');
    connect(&timer_, &QTimer::timeout, this, [this] { act(); });
    timer_.start(kPauseMs);
  }

 private slots:
  void failed(const QString& what, const QString&) { why_ += ": " + what.toUtf8(); }

 private:
  void act() {
    if (!engine()) return;
    if (lines_.isEmpty() || lines_.first().isEmpty()) return timer_.stop();
    const QByteArray line = lines_.takeFirst();
    const QStringList words = QString::fromUtf8(line).split(' ');
    why_.clear();
    const bool done = words[0] == "stage" && words.size() == 4 ? stage(words)
                      : words[0] == "person" && words.size() > 2 ? person(words)
                      : words[0] == "same" && words.size() > 2   ? same(words)
                                                                 : false;
    say((done ? "did " : "not ") + line + (done ? QByteArray() : why_));
  }

  /// Once there is a window.
  bool engine() {
    for (const QWindow* window : QGuiApplication::topLevelWindows())
      if (engine_ == nullptr && (engine_ = qmlEngine(window)) != nullptr)
        connect(model("Work"), SIGNAL(failed(QString, QString)), this, SLOT(failed(QString, QString)));
    return engine_ != nullptr;
  }
  [[nodiscard]] QObject* model(const char* name) const {
    return engine_->singletonInstance<QObject*>(qmlTypeId("Weavelog.View", 1, 0, name));
  }

  bool stage(const QStringList& words) {
    bool done = false;
    return QMetaObject::invokeMethod(model("RoomModel"), "take", Q_RETURN_ARG(bool, done), Q_ARG(QString, words[1]), Q_ARG(QString, words[2]),
                                     Q_ARG(int, words[3].toInt()), Q_ARG(QString, QString()), Q_ARG(QString, QStringLiteral("done"))) &&
           done;
  }

  bool person(const QStringList& words) {
    auto* const card = model("DeskModel")->property("card").value<QObject*>();
    const QVariantMap fields{{QStringLiteral("note"), words.mid(2).join(' ')}};
    bool done = false;
    return QMetaObject::invokeMethod(card, "show", Q_ARG(QString, words[1])) &&
           QMetaObject::invokeMethod(card, "savePerson", Q_RETURN_ARG(bool, done), Q_ARG(QVariantMap, fields)) && done;
  }

  bool same(const QStringList& words) {
    constexpr int kConfirm = 3, kStored = 4;  // DeskModel::Page
    QObject* const desk = model("DeskModel");
    auto* const draft = desk->property("draft").value<QObject*>();
    const auto page = [desk] { return desk->property("page").toInt(); };
    QMetaObject::invokeMethod(desk, "showPlayer", Q_ARG(QString, words[1]));
    QMetaObject::invokeMethod(desk, "sameAsLastTime");
    QMetaObject::invokeMethod(draft, "setDropOff", Q_ARG(QString, QStringLiteral("note")), Q_ARG(QVariant, words.mid(2).join(' ')));
    QMetaObject::invokeMethod(desk, "readBack");
    const bool read = page() == kConfirm;
    if (read) QMetaObject::invokeMethod(desk, "confirm", Q_ARG(QString, draft->property("readBack").toString()));
    const bool stored = page() == kStored;
    if (!stored)
      why_ += ": page " + QByteArray::number(page()) + ", needed " + draft->property("stillNeeded").toStringList().join(' ').toUtf8() + ", found " +
             QJsonDocument::fromVariant(draft->property("findings")).toJson(QJsonDocument::Compact);
    QMetaObject::invokeMethod(desk, "next");
    return stored;
  }

  QList<QByteArray> lines_;
  QByteArray why_;
  QTimer timer_;
  QQmlEngine* engine_ = nullptr;
};

class HandPlugin : public QGenericPlugin {
  Q_OBJECT
  Q_PLUGIN_METADATA(IID QGenericPluginFactoryInterface_iid FILE "app_hand.json")

 public:
  QObject* create(const QString& name, const QString& spec) override { return name == "weavelog_hand" ? new Hand(spec) : nullptr; }
};

#include "app_hand.moc"
