import QtQuick
import Weavelog.Theme

// A QR code drawn from its modules: rows of booleans, true is dark. Whole pixels a module, and the quiet zone of
// four modules that ISO/IEC 18004 asks for. Dark on light in both themes, since cameras read it.
Rectangle {
    id: square

    property var rows: []
    property string name: qsTr("Code to scan")
    readonly property int quietZone: 4
    readonly property int modules: rows.length + 2 * quietZone
    readonly property int cell: Math.max(1, Math.floor(Math.min(width, height) / modules))

    implicitWidth: 280
    implicitHeight: 280
    color: Theme.colour.codeLight
    Accessible.role: Accessible.Graphic
    Accessible.name: name
    onRowsChanged: canvas.requestPaint()
    onCellChanged: canvas.requestPaint()

    Canvas {
        id: canvas
        anchors.centerIn: parent
        width: square.cell * square.rows.length
        height: width
        onPaint: {
            const context = getContext("2d");
            context.fillStyle = Theme.colour.codeLight;
            context.fillRect(0, 0, width, height);
            context.fillStyle = Theme.colour.codeDark;
            const cell = square.cell;
            for (let y = 0; y < square.rows.length; ++y) {
                const row = square.rows[y];
                for (let x = 0; x < row.length; ++x) {
                    if (row[x]) context.fillRect(x * cell, y * cell, cell, cell);
                }
            }
        }
    }
}
