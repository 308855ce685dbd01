import QtQuick

// What is known of one racket.
FieldsSheet {
    property string racket

    function begin(picked) {
        racket = picked.id;
        beginWith(picked.fields);
    }

    title: qsTr("Change racket")
    fields: [{ field: "label", text: qsTr("Mark on the racket") },
             { field: "maker", text: qsTr("Maker") },
             { field: "model", text: qsTr("Model") },
             { field: "serial", text: qsTr("Serial number") },
             { field: "note", text: qsTr("Note") }]
    onKept: if (card.saveRacket(racket, now)) close()
}
