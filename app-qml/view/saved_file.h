#pragma once

#include <QString>

// Where something of a name is saved that a person asked for: in the folder for documents (or in `folder`), under a name that is not there yet,
// which tells the day too; what no file may be called is left out of it. "" where there is no such folder and none can be made.
[[nodiscard]] QString fileToSave(const QString& name, qint64 now, const QString& suffix, const QString& folder = {});
// That folder.
[[nodiscard]] QString folderToSave(const QString& folder = {});
