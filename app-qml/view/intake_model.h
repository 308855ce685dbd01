#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QUrl>
#include <QVariant>

#include <atomic>
#include <memory>

#include "app-qml/view/app_device.h"
#include "app-qml/view/beside_screen.h"
#include "sync/carry/bundle_sight.h"
#include "sync/carry/receipt.h"

class QQmlEngine;
class QJSEngine;

// A file that was carried here: a bundle, looked at before it is taken in, with an account and a receipt at the end; or the receipt of a bundle
// that was made here.
class IntakeModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(State state READ state NOTIFY changed)
  Q_PROPERTY(QString fileName READ fileName NOTIFY changed)
  Q_PROPERTY(double progress READ progress NOTIFY progressChanged)
  // The passphrase that was typed last does not open it.
  Q_PROPERTY(bool wrongWords READ wrongWords NOTIFY changed)
  // {title, text, detail}; empty if nothing is wrong.
  Q_PROPERTY(QVariantMap trouble READ trouble NOTIFY changed)
  // Who made it: its name, what it is to this tablet, three words of its key to compare; when; for people.
  Q_PROPERTY(QString maker READ maker NOTIFY changed)
  Q_PROPERTY(QString standing READ standing NOTIFY changed)
  Q_PROPERTY(QString keyWords READ keyWords NOTIFY changed)
  Q_PROPERTY(QString made READ made NOTIFY changed)
  Q_PROPERTY(QString note READ note NOTIFY changed)
  Q_PROPERTY(bool backup READ backup NOTIFY changed)
  // What it holds and what of that is new: a line each. Names of players who are new here, at most twelve, and how many more.
  Q_PROPERTY(QStringList holds READ holds NOTIFY changed)
  Q_PROPERTY(QStringList newNames READ newNames NOTIFY changed)
  Q_PROPERTY(int newNamesMore READ newNamesMore NOTIFY changed)
  // Nobody here knows its maker: somebody has to compare the words and say that it is all right.
  Q_PROPERTY(bool mustTrust READ mustTrust NOTIFY changed)
  // It can be taken in, once that is said where it has to be.
  Q_PROPERTY(bool takeable READ takeable NOTIFY changed)
  // The account at the end, a line each; whether all of it is here, and whether going on makes sense.
  Q_PROPERTY(QStringList account READ account NOTIFY changed)
  Q_PROPERTY(bool complete READ complete NOTIFY changed)
  Q_PROPERTY(int questions READ questions NOTIFY changed)
  // Where the receipt lies; "" if it is not written.
  Q_PROPERTY(QString receiptFile READ receiptFile NOTIFY changed)

 public:
  // Locked: it needs a passphrase. Seen: it was looked at. Told: it was a receipt, `account` says of what.
  enum State { Empty, Looking, Locked, Seen, Taking, Taken, Told, Failed };
  Q_ENUM(State)

  // `device` must be open and outlive it.
  explicit IntakeModel(AppDevice& device, QObject* parent = nullptr);
  ~IntakeModel() override;
  static IntakeModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] State state() const { return state_; }
  [[nodiscard]] QString fileName() const;
  [[nodiscard]] double progress() const { return progress_; }
  [[nodiscard]] bool wrongWords() const { return wrongWords_; }
  [[nodiscard]] QVariantMap trouble() const { return trouble_; }
  [[nodiscard]] QString maker() const;
  [[nodiscard]] QString standing() const;
  [[nodiscard]] QString keyWords() const;
  [[nodiscard]] QString made() const;
  [[nodiscard]] QString note() const;
  [[nodiscard]] bool backup() const { return sight_ && sight_->manifest.backup; }
  [[nodiscard]] QStringList holds() const { return holds_; }
  [[nodiscard]] QStringList newNames() const { return newNames_; }
  [[nodiscard]] int newNamesMore() const { return newNamesMore_; }
  [[nodiscard]] bool mustTrust() const;
  [[nodiscard]] bool takeable() const;
  [[nodiscard]] QStringList account() const { return account_; }
  [[nodiscard]] bool complete() const { return complete_; }
  [[nodiscard]] int questions() const { return questions_; }
  [[nodiscard]] QString receiptFile() const { return receiptFile_; }

  // Looks at a file; a bundle, or a receipt.
  Q_INVOKABLE void open(const QUrl& file);
  Q_INVOKABLE void unlock(const QString& words);
  // Takes it in. `trusted`: somebody has compared the words of a maker that nobody knows here.
  Q_INVOKABLE void take(bool trusted);
  // The same file again, after it was stopped or the stick was away: what is here already is passed over.
  Q_INVOKABLE void goOn();
  Q_INVOKABLE void stop();
  Q_INVOKABLE void saveReceipt(const QUrl& folder);
  // Done with it.
  Q_INVOKABLE void leave();

 signals:
  void changed();
  void progressChanged();
  // What was made here and who has it is to be read anew.
  void receiptRead();

 private:
  struct Sighted {
    std::optional<weavelog::BundleSight> sight;
    std::optional<weavelog::Fault> fault;
    bool locked = false, wrong = false;
    bool ofReceipt = false;  ///< the fault: it was read, and does not count
    QStringList names;
    int more = 0;
    std::optional<weavelog::Receipt> receipt;
    std::vector<weavelog::ReceiptLine> lines;
  };
  struct Brought {
    std::optional<weavelog::TakenBundle> bundle;
    std::optional<weavelog::Fault> fault;
    weavelog::Bytes receipt;
    std::string receiptFile;
    int questions = 0;
  };

  [[nodiscard]] weavelog::TakeOptions options();
  void look();
  void seen(const Sighted& what);
  void taken(const Brought& what);
  void tellReceipt(const weavelog::Receipt& receipt, const std::vector<weavelog::ReceiptLine>& lines);
  void tellProgress(std::uint64_t entries, std::uint64_t all);
  void forget();
  void setState(State state);

  AppDevice& device_;
  State state_ = Empty;
  std::filesystem::path file_;
  std::optional<std::string> words_;
  bool trusted_ = false, wrongWords_ = false, complete_ = false;
  int newNamesMore_ = 0, questions_ = 0;
  double progress_ = 0;
  std::optional<weavelog::BundleSight> sight_;
  weavelog::Bytes receipt_;
  QString receiptFile_;
  QStringList holds_, newNames_, account_;
  QVariantMap trouble_;
  std::atomic<bool> stop_ = false;
  BesideScreen beside_{*this};  // ends before what it reports to
};
