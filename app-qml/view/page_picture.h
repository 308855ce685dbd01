#pragma once

#include <QtQml/qqmlregistration.h>
#include <QQuickPaintedItem>

#include "app-qml/view/print_model.h"

// A page of the paper that is about to be printed, as large as the item.
class PagePicture : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(PrintModel* model READ model WRITE setModel NOTIFY modelChanged)
  // From 0 on.
  Q_PROPERTY(int page READ page WRITE setPage NOTIFY pageChanged)

 public:
  explicit PagePicture(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) {}

  [[nodiscard]] PrintModel* model() const { return model_; }
  [[nodiscard]] int page() const { return page_; }
  void setModel(PrintModel* model);
  void setPage(int page);
  void paint(QPainter* painter) override;

 signals:
  void modelChanged();
  void pageChanged();

 private:
  PrintModel* model_ = nullptr;
  int page_ = 0;
};
