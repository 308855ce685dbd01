#pragma once

#include <QtQml/qqmlregistration.h>
#include <QElapsedTimer>
#include <QObject>
#include <QVariant>

#include <optional>

#include "app-qml/view/scan_ear.h"
#include "app-qml/view/work.h"
#include "core/model/queries.h"

class QQmlEngine;
class QJSEngine;

// What a scanner reads from the tags: whose racket it is; and whether the tag on a racket and the tag on its bag belong together.
//
// It listens to every key of the app, so that a scan works wherever the keyboard is; a code that went into a text field is taken out of
// it again.
class ScanModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Where one number was given out twice: [{book, job, text, detail}] to choose from.
  Q_PROPERTY(QVariantList several READ several NOTIFY severalFound)
  // Two tags are being compared; scans go there.
  Q_PROPERTY(bool comparing READ comparing WRITE setComparing NOTIFY compareChanged)
  Q_PROPERTY(Compared compared READ compared NOTIFY compareChanged)
  // [{text, detail, fault}]: what was read so far, the racket's tag first; at most two.
  Q_PROPERTY(QVariantList sides READ sides NOTIFY compareChanged)
  // The job of both tags, while they agree: {book, job, text, nextStage}.
  Q_PROPERTY(QVariantMap both READ both NOTIFY compareChanged)

 public:
  enum class Compared { Nothing, First, Same, Different, Unknown };
  Q_ENUM(Compared)

  explicit ScanModel(Work& work, QObject* parent = nullptr);
  ~ScanModel() override;
  // Works on the engine's device, which must be open.
  static ScanModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] QVariantList several() const { return several_; }
  [[nodiscard]] bool comparing() const { return comparing_; }
  void setComparing(bool comparing);
  [[nodiscard]] Compared compared() const;
  [[nodiscard]] QVariantList sides() const;
  [[nodiscard]] QVariantMap both() const;

  // A code that was scanned, or a number that was typed; found(), severalFound(), cardScanned() or, with a fault, Work::failed() follows.
  Q_INVOKABLE void take(const QString& code);
  // True for a text that a scanner typed.
  Q_INVOKABLE bool isCode(const QString& text) const;
  // Rackets of today's event whose tag has that number, those in the room first: [{book, job, text, detail, stage}]. Empty for a text
  // that is no number.
  Q_INVOKABLE QVariantList withNumber(const QString& text) const;
  // {book, job, text, stage, nextStage} of a job as it is now; nextStage is 0 where no single tap may take a step. Empty for a job that is
  // not here.
  Q_INVOKABLE QVariantMap jobOf(const QString& book, const QString& job) const;
  // Begins comparing anew.
  Q_INVOKABLE void compareAgain();

 signals:
  void found(const QString& book, const QString& job);
  void severalFound();
  // A player card, whole or not.
  void cardScanned(const QString& code);
  void compareChanged();

 private:
  struct Side {
    QString fault;  // why it says nothing
    std::optional<weavelog::JobRow> row;
  };

  bool eventFilter(QObject* watched, QEvent* event) override;
  void takeOutOfField(qsizetype length) const;
  // The jobs of a scanned code or a typed number; a fault that tells a person what to do.
  [[nodiscard]] weavelog::Outcome<std::vector<weavelog::JobRow>> jobsOf(const QString& code) const;
  [[nodiscard]] static QString titleOf(const weavelog::JobRow& row);
  [[nodiscard]] QVariantMap rowOf(const weavelog::JobRow& row) const;

  Work& work_;
  ScanEar ear_;
  QElapsedTimer time_;
  bool eatEnterUp_ = false;
  QVariantList several_;
  bool comparing_ = false;
  std::vector<Side> sides_;
};
