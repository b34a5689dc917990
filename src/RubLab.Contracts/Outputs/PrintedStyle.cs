namespace RubLab.Contracts.Outputs;

/// <summary>How the printed sheet looks: black on white, large enough to be read at arm's length.</summary>
public static class PrintedStyle
{
    /// <summary>The content of the document's one style element, to the letter: a policy may name it by its hash.</summary>
    public static string Css { get; } = """

        @page { margin: 14mm; }
        * { box-sizing: border-box; }
        body { margin: 0 auto; max-width: 190mm; padding: 4mm; color: #000; background: #fff; font: 14pt/1.35 sans-serif; }
        h1 { font-size: 16pt; margin: 0 0 2mm; }
        h2 { font-size: 24pt; line-height: 1.15; margin: 0 0 2mm; overflow-wrap: anywhere; }
        h3 { font-size: 15pt; margin: 6mm 0 2mm; }
        p { margin: 0 0 2mm; }
        section { break-after: page; margin-bottom: 12mm; }
        section:last-child { break-after: auto; }
        table { width: 100%; border-collapse: collapse; margin: 0 0 3mm; }
        caption { text-align: left; font-weight: bold; font-size: 15pt; padding: 4mm 0 1mm; }
        thead { display: table-header-group; }
        tr, li { break-inside: avoid; }
        th, td { border-bottom: 0.3mm solid #000; padding: 1.2mm 2mm 1.2mm 0; text-align: left; vertical-align: baseline; overflow-wrap: break-word; }
        .aloud { overflow-wrap: anywhere; }
        thead th { white-space: nowrap; font-size: 11pt; border-bottom-width: 0.7mm; }
        tbody th { font-weight: normal; }
        .weigh { font-size: 24pt; font-weight: bold; line-height: 1.1; white-space: nowrap; }
        .running { font-size: 16pt; white-space: nowrap; }
        .spoon, .source { font-size: 10pt; }
        .remarks { font-size: 12pt; }
        ul { margin: 0; padding-left: 6mm; }
        footer { font-size: 10pt; padding-top: 3mm; }
        @media print { body { max-width: none; padding: 0; } section { margin-bottom: 0; } }

        """.ReplaceLineEndings("\n");
}
