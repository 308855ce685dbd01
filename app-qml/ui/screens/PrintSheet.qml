pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A paper before it is printed: its pages as they will be, what they are printed on, and where they go.
Sheet {
    id: sheet

    function showJob(book, job) {
        PrintModel.showJob(book, job);
        open();
    }
    // With `atOnce` the tags go to the printer that was used last, where it is there.
    function showDropOff(book, atOnce) {
        PrintModel.showDropOff(book, atOnce);
        open();
    }
    function showRoom() {
        PrintModel.showRoom();
        open();
    }

    // Cards of players, by their books.
    function showCards(books) {
        PrintModel.showCards(books);
        open();
    }

    // All that is held on a player.
    function showRecord(book) {
        PrintModel.showRecord(book);
        open();
    }

    title: PrintModel.title
    onOpened: pictures.positionViewAtBeginning()
    onClosed: PrintModel.leave()

    PickList {
        objectName: "paper"
        Layout.fillWidth: true
        visible: PrintModel.papers.length > 1
        label: qsTr("Paper")
        options: PrintModel.papers
        value: PrintModel.paper
        onPicked: value => PrintModel.paper = value
    }
    ChoiceBar {
        objectName: "size"
        Layout.fillWidth: true
        visible: PrintModel.sizes.length > 1
        label: qsTr("Size")
        options: PrintModel.sizes
        value: PrintModel.size
        onChosen: value => PrintModel.size = value
    }
    ChoiceBar {
        objectName: "order"
        Layout.fillWidth: true
        visible: PrintModel.paper === "pick-up-list"
        label: qsTr("In the order of")
        options: [{ value: false, text: qsTr("Family names") }, { value: true, text: qsTr("Tag numbers") }]
        value: PrintModel.byTag
        onChosen: value => PrintModel.byTag = value
    }
    FigureStepper {
        objectName: "start"
        Layout.fillWidth: true
        visible: PrintModel.labels > 0
        label: qsTr("First free label")
        hint: qsTr("Counted from the top left, row by row.")
        step: "1"
        least: "1"
        most: String(PrintModel.labels)
        value: String(PrintModel.start)
        onEdited: value => PrintModel.start = parseInt(value)
    }
    Notice {
        Layout.fillWidth: true
        visible: PrintModel.trouble.length > 0
        kind: Notice.Attention
        title: qsTr("There is nothing to print")
        text: PrintModel.trouble
    }
    Notice {
        objectName: "leftOut"
        Layout.fillWidth: true
        visible: PrintModel.leftOut.length > 0
        kind: Notice.Attention
        title: qsTr("Not on it")
        text: Array.from(PrintModel.leftOut).join("\n")
    }
    PickList {
        objectName: "printer"
        Layout.fillWidth: true
        visible: PrintModel.printers.length > 1
        label: qsTr("Printer")
        options: Array.from(PrintModel.printers).map(name => ({ value: name, text: name }))
        value: PrintModel.printer
        onPicked: value => PrintModel.printer = value
    }
    Notice {
        objectName: "noPrinter"
        Layout.fillWidth: true
        visible: !PrintModel.looking && PrintModel.printers.length === 0 && PrintModel.pages > 0
        kind: Notice.Info
        title: qsTr("No printer is set up on this device")
        text: qsTr("Save the PDF and print it from a device that has one.")
    }
    SideBySide {
        Layout.fillWidth: true
        visible: PrintModel.pages > 0
        least: 200
        ActionButton {
            objectName: "printNow"
            width: parent.columnWidth
            visible: PrintModel.printers.length > 0
            enabled: !PrintModel.printing
            text: PrintModel.printing ? qsTr("On its way ...")
                : PrintModel.printers.length > 1 ? qsTr("Print") : qsTr("Print on %1").arg(PrintModel.printer)
            onClicked: PrintModel.print()
        }
        ActionButton {
            objectName: "savePdf"
            width: parent.columnWidth
            kind: PrintModel.printers.length > 0 ? ActionButton.Secondary : ActionButton.Primary
            text: qsTr("Save PDF")
            onClicked: PrintModel.savePdf()
        }
        ActionButton {
            objectName: "saveData"
            width: parent.columnWidth
            visible: PrintModel.paper === "record"
            kind: ActionButton.Secondary
            text: qsTr("Save for programs (JSON)")
            onClicked: PrintModel.saveData()
        }
    }
    Notice {
        objectName: "result"
        Layout.fillWidth: true
        visible: PrintModel.result !== PrintModel.Nothing
        kind: PrintModel.result === PrintModel.Saved || PrintModel.result === PrintModel.Printed ? Notice.Agreed : Notice.Danger
        title: {
            switch (PrintModel.result) {
            case PrintModel.Saved: return qsTr("It is saved");
            case PrintModel.Printed: return qsTr("Handed to %1").arg(PrintModel.told);
            case PrintModel.NotSaved: return qsTr("It was not saved");
            case PrintModel.NotWritten: return qsTr("Not printed: the paper could not be written");
            case PrintModel.NoPrinting: return qsTr("Not printed: this device has no printing system");
            case PrintModel.Silent: return qsTr("Not printed: the printing system does not answer");
            default: return qsTr("Not printed: the printer refused it");
            }
        }
        text: PrintModel.result === PrintModel.Printed ? "" : PrintModel.told
    }
    RowLayout {
        Layout.fillWidth: true
        visible: PrintModel.pages > 0
        spacing: Theme.gap
        Words {
            objectName: "pages"
            Layout.fillWidth: true
            meaning: Words.Strong
            text: PrintModel.pages === 1 ? qsTr("One page") : qsTr("Page %1 of %2").arg(pictures.current + 1).arg(PrintModel.pages)
        }
        IconAction {
            objectName: "pageBack"
            visible: PrintModel.pages > 1
            enabled: pictures.current > 0
            framed: true
            iconName: "back"
            text: qsTr("Page before")
            onClicked: pictures.goTo(pictures.current - 1)
        }
        IconAction {
            objectName: "pageOn"
            visible: PrintModel.pages > 1
            enabled: pictures.current < PrintModel.pages - 1
            framed: true
            iconName: "arrow"
            text: qsTr("Next page")
            onClicked: pictures.goTo(pictures.current + 1)
        }
    }
    ListView {
        id: pictures
        objectName: "pictures"
        property int current: 0

        function goTo(page) { positionViewAtIndex(page, ListView.Beginning); }
        // Sheets as wide as there is room, labels a little larger than they are.
        function widthOf(size) { return Math.min(width - 2, size.width * 4.5); }

        Layout.fillWidth: true
        Layout.preferredHeight: {
            if (PrintModel.pages === 0) return 0;
            const size = PrintModel.pageSize(0);
            return Math.round(widthOf(size) * size.height / size.width) + 2;
        }
        visible: PrintModel.pages > 0
        orientation: ListView.Horizontal
        spacing: Theme.gap
        clip: true
        cacheBuffer: 0
        boundsBehavior: Flickable.StopAtBounds
        model: PrintModel.pages
        onContentXChanged: current = Math.max(0, indexAt(contentX + 1, 1))

        delegate: Rectangle {
            id: leaf
            required property int index
            readonly property size mm: PrintModel.pages > index ? PrintModel.pageSize(index) : Qt.size(1, 1)

            width: Math.round(pictures.widthOf(mm)) + 2
            height: Math.round(pictures.widthOf(mm) * mm.height / Math.max(1, mm.width)) + 2
            color: "white"
            border.width: 1
            border.color: Theme.colour.line
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("Page %1: %2").arg(index + 1).arg(PrintModel.pages > index ? PrintModel.pageText(index) : "")

            PagePicture {
                anchors.fill: parent
                anchors.margins: 1
                model: PrintModel
                page: leaf.index
            }
        }
    }
}
