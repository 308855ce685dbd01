#pragma once
// Another person's tablet, that a test lets meet this one.

#include <memory>
#include <string>

#include "core/desk/questions.h"
#include "core/model/tables.h"
#include "core/store/ledger.h"

struct AwayTablet {
  weavelog::Ledger& here;
  weavelog::BookId book;
  std::unique_ptr<weavelog::Ledger> there;  // none: it could not be opened, or did not take the book

  AwayTablet(weavelog::Ledger& ledger, const weavelog::BookId& of, const std::string& name = "Bench tablet") : here(ledger), book(of) {
    weavelog::LedgerOptions options;
    options.file = ":memory:";
    options.registry = &here.registry();
    options.device_name = name;
    options.projections.push_back(std::make_shared<weavelog::ModelTables>());
    auto opened = weavelog::Ledger::open(std::move(options));
    if (opened && (!book || bring(here, **opened))) there = std::move(*opened);
  }
  // What it wrote comes here.
  [[nodiscard]] bool meet() const { return there && bring(*there, here); }
  [[nodiscard]] bool write(const weavelog::Outcome<weavelog::Draft>& draft) const { return there && draft && there->append(*draft).has_value(); }
  // Closes the book's question with so many kilograms.
  [[nodiscard]] bool close(int kilograms) const {
    if (!there || there->open_questions(book).empty()) return false;
    const weavelog::Value answer = weavelog::Quantity{{kilograms, 0}, weavelog::Unit::kilogram_force};
    return write(weavelog::close_question(there->open_questions(book).front(), answer)) && meet();
  }

 private:
  [[nodiscard]] bool bring(const weavelog::Ledger& from, weavelog::Ledger& to) const {
    return to.ingest(from.missing(book, to.heads(book), 1 << 30), 0).has_value();
  }
};
