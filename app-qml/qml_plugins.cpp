// The QML modules are static libraries: whoever links them says so here, once for the app and the tests.
#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Weavelog_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Weavelog_ViewPlugin)
Q_IMPORT_QML_PLUGIN(Weavelog_PartsPlugin)
Q_IMPORT_QML_PLUGIN(Weavelog_ScreensPlugin)
Q_IMPORT_QML_PLUGIN(Weavelog_GalleryPlugin)
