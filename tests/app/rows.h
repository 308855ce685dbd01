#pragma once
// Rows of a list as a screen reads them.

#include <QVariant>

/// Row `index`; an empty one where there is none.
inline QVariantMap at(const QVariantList& list, qsizetype index) { return list.value(index).toMap(); }
