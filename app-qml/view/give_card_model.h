#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include "app-qml/view/work.h"

class QQmlEngine;
class QJSEngine;

// A player's card as it is given away: its code to look at, what is on it, and saved as a picture or a text. On paper it is PrintModel's.
class GiveCardModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(QString book READ book NOTIFY changed)
  // Rows of the code's modules, for CodeSquare; empty while there is none.
  Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
  // The text that the code holds.
  Q_PROPERTY(QString text READ text NOTIFY changed)
  // What is on it: see cardLines().
  Q_PROPERTY(QVariantList lines READ lines NOTIFY changed)
  // Setups and rackets for which there was no room.
  Q_PROPERTY(int leftOut READ leftOut NOTIFY changed)
  Q_PROPERTY(QString made READ made NOTIFY changed)
  Q_PROPERTY(QString device READ device NOTIFY changed)
  // Why there is no card; "" otherwise.
  Q_PROPERTY(Trouble trouble READ trouble NOTIFY changed)
  Q_PROPERTY(QString troubleText READ troubleText NOTIFY changed)
  // What became of saving: `told` says where, or what went wrong.
  Q_PROPERTY(Result result READ result NOTIFY resultChanged)
  Q_PROPERTY(QString told READ told NOTIFY resultChanged)

 public:
  enum Trouble { None, NoConsent, Other };
  Q_ENUM(Trouble)
  enum Result { Nothing, PictureSaved, TextSaved, TextCopied, NotSaved };
  Q_ENUM(Result)

  // `work` must outlive it.
  explicit GiveCardModel(Work& work, QObject* parent = nullptr) : QObject(parent), work_(work) {}
  // Works on the engine's device, which must be open.
  static GiveCardModel* create(QQmlEngine* engine, QJSEngine* script);

  // Makes and signs the card of a player's book as of now.
  Q_INVOKABLE void show(const QString& book);
  Q_INVOKABLE void leave();
  // Into the folder for documents, under a name that was not there yet: 600 dots wide or more, with the quiet zone.
  Q_INVOKABLE void savePicture();
  Q_INVOKABLE void saveText();
  Q_INVOKABLE void copyText();

  [[nodiscard]] QString name() const { return name_; }
  [[nodiscard]] QString book() const { return book_; }
  [[nodiscard]] QVariantList rows() const { return rows_; }
  [[nodiscard]] QString text() const { return text_; }
  [[nodiscard]] QVariantList lines() const { return lines_; }
  [[nodiscard]] int leftOut() const { return leftOut_; }
  [[nodiscard]] QString made() const { return made_; }
  [[nodiscard]] QString device() const { return device_; }
  [[nodiscard]] Trouble trouble() const { return trouble_; }
  [[nodiscard]] QString troubleText() const { return troubleText_; }
  [[nodiscard]] Result result() const { return result_; }
  [[nodiscard]] QString told() const { return told_; }
  // Where files are saved; that of the system otherwise.
  void setFolder(const QString& folder) { folder_ = folder; }

 signals:
  void changed();
  void resultChanged();

 private:
  void clear();
  void end(Result result, const QString& told);
  [[nodiscard]] QString fileFor(const QString& suffix) const;

  Work& work_;
  QString folder_;
  QString book_, name_, text_, made_, device_, troubleText_, told_;
  QVariantList rows_, lines_;
  int leftOut_ = 0;
  Trouble trouble_ = None;
  Result result_ = Nothing;
};
