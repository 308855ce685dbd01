#pragma once

#include <functional>
#include <vector>

#include "app-qml/papers/paper_page.h"

// Parts of a tag or card below each other. They ask for heights; where there is no room for all of them each gets less.
class Stack {
 public:
  explicit Stack(const QRectF& box) : box_(box) {}

  void add(qreal height, std::function<void(const QRectF&)> draw) { parts_.push_back({height, std::move(draw)}); }
  // A line across.
  void addRule(PaperPage& page);
  void draw() const;

 private:
  struct Part {
    qreal height;
    std::function<void(const QRectF&)> draw;
  };
  QRectF box_;
  std::vector<Part> parts_;
};
