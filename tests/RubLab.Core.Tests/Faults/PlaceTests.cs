using RubLab.Core.Faults;

namespace RubLab.Core.Tests.Faults;

public sealed class PlaceTests
{
    [Fact]
    public void The_whole_document_is_the_empty_pointer() => Assert.Equal("", new FaultLog().Root.Pointer);

    [Theory]
    [InlineData("foo", "/foo")]
    [InlineData("", "/")]
    [InlineData("a/b", "/a~1b")]
    [InlineData("m~n", "/m~0n")]
    [InlineData("~1", "/~01")]
    [InlineData("/~", "/~1~0")]
    [InlineData("c%d", "/c%d")]
    [InlineData("k\"l", "/k\"l")]
    [InlineData(" ", "/ ")]
    public void A_member_is_escaped_as_RFC_6901_says(string member, string pointer) =>
        Assert.Equal(pointer, new FaultLog().Root.At(member).Pointer);

    [Fact]
    public void Places_nest_and_keep_their_log()
    {
        var log = new FaultLog();

        var place = log.Root.At("lines").At(12).At("amount");

        Assert.Equal("/lines/12/amount", place.Pointer);
        Assert.Same(log, place.Log);
    }

    [Fact]
    public void A_place_is_not_moved_by_going_deeper()
    {
        var lines = new FaultLog().Root.At("lines");

        _ = lines.At(0);

        Assert.Equal("/lines", lines.Pointer);
    }
}
