#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include "app-qml/papers/paper.h"
#include "app-qml/papers/printers.h"
#include "app-qml/view/settings.h"
#include "app-qml/view/work.h"

class QQmlEngine;
class QJSEngine;

// A paper before it is printed: which, on what, its pages to look at; saving it and handing it to a printer. Nothing waits for a printer.
class PrintModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Those that can be made of what show...() chose: [{value, text}].
  Q_PROPERTY(QVariantList papers READ papers NOTIFY papersChanged)
  Q_PROPERTY(QString paper READ paper WRITE setPaper NOTIFY pagesChanged)
  Q_PROPERTY(QString title READ title NOTIFY pagesChanged)
  // [{value, text}]; the last choice is remembered on this device.
  Q_PROPERTY(QVariantList sizes READ sizes NOTIFY pagesChanged)
  Q_PROPERTY(QString size READ size WRITE setSize NOTIFY pagesChanged)
  // The first free label of a sheet, from 1 on; `labels` is how many there are on it, 0 for a paper without any.
  Q_PROPERTY(int start READ start WRITE setStart NOTIFY pagesChanged)
  Q_PROPERTY(int labels READ labels NOTIFY pagesChanged)
  // The pick-up list by tag number in place of family name.
  Q_PROPERTY(bool byTag READ byTag WRITE setByTag NOTIFY pagesChanged)
  Q_PROPERTY(int pages READ pages NOTIFY pagesChanged)
  // Why there is no page; "" otherwise.
  Q_PROPERTY(QString trouble READ trouble NOTIFY pagesChanged)
  // Who of those that were asked for is not on it, and why.
  Q_PROPERTY(QStringList leftOut READ leftOut NOTIFY pagesChanged)
  Q_PROPERTY(QStringList printers READ printers NOTIFY printersChanged)
  // The one that is printed on: the last one that was, otherwise the system's usual one.
  Q_PROPERTY(QString printer READ printer WRITE setPrinter NOTIFY printersChanged)
  Q_PROPERTY(bool looking READ looking NOTIFY printersChanged)
  Q_PROPERTY(bool printing READ printing NOTIFY printersChanged)
  // What became of it: nothing yet, saved or printed (`told` says where), or what went wrong (`told` is what the system said).
  Q_PROPERTY(Result result READ result NOTIFY resultChanged)
  Q_PROPERTY(QString told READ told NOTIFY resultChanged)

 public:
  enum Result { Nothing, Saved, Printed, NotSaved, NoPrinting, NotWritten, Refused, Silent };
  Q_ENUM(Result)

  // Both must outlive it.
  PrintModel(Work& work, Settings& settings, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static PrintModel* create(QQmlEngine* engine, QJSEngine* script);

  // One racket: its tag, the tag of its bag, its player's statement.
  Q_INVOKABLE void showJob(const QString& book, const QString& job);
  // The rackets of a player's newest drop-off. With `atOnce` their tags are printed without being asked for again if the printer that
  // was used last is there.
  Q_INVOKABLE void showDropOff(const QString& book, bool atOnce);
  // The room's lists, and tags of all open rackets.
  Q_INVOKABLE void showRoom();
  // Player cards: of one player one card, of several sheets to cut.
  Q_INVOKABLE void showCards(const QStringList& books);
  // All that is held on a player.
  Q_INVOKABLE void showRecord(const QString& book);
  // Forgets the pages.
  Q_INVOKABLE void leave();

  [[nodiscard]] QVariantList papers() const;
  [[nodiscard]] QString paper() const { return QLatin1String(nameOf(request_.kind)); }
  [[nodiscard]] QString title() const { return paper_.title; }
  [[nodiscard]] QVariantList sizes() const;
  [[nodiscard]] QString size() const { return request_.size; }
  [[nodiscard]] int start() const { return request_.start; }
  [[nodiscard]] int labels() const;
  [[nodiscard]] bool byTag() const { return request_.byTag; }
  [[nodiscard]] int pages() const { return static_cast<int>(paper_.pages.size()); }
  [[nodiscard]] QString trouble() const { return trouble_; }
  [[nodiscard]] QStringList leftOut() const { return paper_.leftOut; }
  [[nodiscard]] QStringList printers() const { return printers_.names(); }
  [[nodiscard]] QString printer() const;
  [[nodiscard]] bool looking() const { return printers_.state() == Printers::State::looking; }
  [[nodiscard]] bool printing() const { return printers_.printing(); }
  [[nodiscard]] Result result() const { return result_; }
  [[nodiscard]] QString told() const { return told_; }

  void setPaper(const QString& paper);
  void setSize(const QString& size);
  void setStart(int start);
  void setByTag(bool byTag);
  void setPrinter(const QString& printer);

  // Width and height, mm; nothing for a page that is not there.
  Q_INVOKABLE QSizeF pageSize(int page) const;
  // What is written on it, for who can't see it.
  Q_INVOKABLE QString pageText(int page) const;
  [[nodiscard]] const PaperPage* page(int number) const;

  // Into the folder for documents, under a name that was not there yet.
  Q_INVOKABLE void savePdf();
  // The record as a file for other programs: one of each book of the person.
  Q_INVOKABLE void saveData();
  // On the chosen printer.
  Q_INVOKABLE void print();
  // Photos by book and hash, for papers that show them.
  void setPictures(std::function<QImage(const weavelog::BookId&, const weavelog::Bytes&)> pictures) { pictures_ = std::move(pictures); }
  // Where papers are saved; that of the system otherwise.
  void setFolder(const QString& folder) { folder_ = folder; }

 signals:
  void papersChanged();
  void pagesChanged();
  void printersChanged();
  void resultChanged();

 private:
  void show(std::vector<PaperKind> kinds, const weavelog::BookId& player, std::vector<weavelog::JobRow> jobs,
            std::vector<weavelog::BookId> players = {});
  void make();
  // With whose cards went out.
  void noteCards();
  void end(Result result, const QString& told);
  void printersKnown();

  Work& work_;
  Settings& settings_;
  Printers printers_;
  std::vector<PaperKind> kinds_;
  PaperRequest request_;
  Paper paper_;
  QString trouble_;
  QString printer_;  // chosen since the sheet was opened
  QString folder_;
  std::function<QImage(const weavelog::BookId&, const weavelog::Bytes&)> pictures_;
  bool atOnce_ = false;
  Result result_ = Nothing;
  QString told_;
};
