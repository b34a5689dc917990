using RubLab.Contracts.Reading;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;
using RubLab.Core.Sources;

namespace RubLab.Contracts.Tests.Reading;

public class WordsTests
{
    [Fact]
    public void Every_value_has_a_word_that_reads_back_as_itself()
    {
        RoundTrip(Vocabulary.Kinds);
        RoundTrip(Vocabulary.Bases);
        RoundTrip(Vocabulary.Weights);
        RoundTrip(Vocabulary.Stages);
        RoundTrip(Vocabulary.Verdicts);
        RoundTrip(Vocabulary.Severities);
        RoundTrip(Vocabulary.Confidences);
        RoundTrip(Vocabulary.Dimensions);
    }

    [Fact]
    public void The_kinds_and_verdicts_are_the_contracts_words()
    {
        Assert.Equal(["dry-brine", "rub", "slather", "injection", "soak", "mop", "sauce"], Vocabulary.Kinds.All);
        Assert.Equal(["within", "below", "above", "cannot-tell"], Vocabulary.Verdicts.All);
        Assert.Equal(["info", "advice", "warning", "danger"], Vocabulary.Severities.All);
        Assert.Equal(["before", "during", "wrap", "after"], Vocabulary.Stages.All);
        Assert.Equal(["green", "cooked", "portion", "area"], Vocabulary.Bases.All);
        Assert.Equal(FormulaKind.Soak, Vocabulary.Kinds.Read("soak", new FaultLog().Root));
        Assert.Equal(Verdict.CannotTell, Vocabulary.Verdicts.Read("cannot-tell", new FaultLog().Root));
        Assert.Equal(Stage.Wrap, Vocabulary.Stages.Read("wrap", new FaultLog().Root));
        Assert.Equal(RatioBase.Cooked, Vocabulary.Bases.Read("cooked", new FaultLog().Root));
        Assert.Equal(Severity.Danger, Vocabulary.Severities.Read("danger", new FaultLog().Root));
        Assert.Equal(Confidence.VeryLow, Vocabulary.Confidences.Read("very-low", new FaultLog().Root));
        Assert.Equal(Dimension.Coverage, Vocabulary.Dimensions.Read("coverage", new FaultLog().Root));
    }

    [Theory]
    [InlineData("Rub")]
    [InlineData(" rub")]
    [InlineData("1")]
    [InlineData("")]
    [InlineData("dry_brine")]
    public void A_word_is_read_to_the_letter(string word)
    {
        var log = new FaultLog();
        Assert.Null(Vocabulary.Kinds.Read(word, log.Root.At("kind")));
        var fault = Assert.Single(log.Faults);
        Assert.Equal("/kind", fault.Pointer);
        Assert.Equal("unknown-word", fault.Code);
        Assert.Equal(Vocabulary.Kinds.All, Assert.IsType<string[]>(fault.Parameters["allowed"]));
        Assert.Equal(word, fault.Parameters["value"]);
    }

    [Fact]
    public void A_word_left_out_is_the_default_and_no_fault()
    {
        var log = new FaultLog();
        Assert.Equal(Stage.After, Vocabulary.Stages.Read(null, log.Root, Stage.After));
        Assert.Null(Vocabulary.Stages.Read(null, log.Root));
        Assert.True(log.IsClean);
    }

    private static void RoundTrip<T>(Words<T> words)
        where T : struct, Enum
    {
        var values = Enum.GetValues<T>();
        Assert.Equal(values.Length, words.All.Count);
        Assert.All(values, value => Assert.Equal(value, words.Read(words[value], new FaultLog().Root)));
        Assert.All(words.All, word => Assert.Matches("^[a-z]+(-[a-z]+)*$", word));
    }
}
