#include "app-qml/view/page_picture.h"

#include <QPainter>

void PagePicture::setModel(PrintModel* model) {
  if (model_ == model) return;
  if (model_) model_->disconnect(this);
  model_ = model;
  if (model_) connect(model_, &PrintModel::pagesChanged, this, [this] { update(); });
  emit modelChanged();
  update();
}

void PagePicture::setPage(int page) {
  if (page_ == page) return;
  page_ = page;
  emit pageChanged();
  update();
}

void PagePicture::paint(QPainter* painter) {
  painter->fillRect(QRectF(0, 0, width(), height()), Qt::white);
  const PaperPage* page = model_ ? model_->page(page_) : nullptr;
  if (!page || page->size().isEmpty()) return;
  painter->setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  page->draw(*painter, std::min(width() / page->size().width(), height() / page->size().height()));
}
