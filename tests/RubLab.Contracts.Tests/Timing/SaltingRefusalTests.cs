namespace RubLab.Contracts.Tests.Timing;

public class SaltingRefusalTests
{
    [Theory]
    [InlineData("/thickness/value = 0", "/thickness/value out-of-range")]
    [InlineData("/thickness/value = -5", "/thickness/value out-of-range")]
    [InlineData("/thickness/value = 1001", "/thickness/value out-of-range")]
    [InlineData("/thickness/unit = \"g\"", "/thickness/unit unit-not-allowed")]
    [InlineData("- /thickness", "/thickness required")]
    [InlineData("/facesTreated = 0", "/facesTreated out-of-range")]
    [InlineData("/facesTreated = 3", "/facesTreated out-of-range")]
    [InlineData("/blockedFaces = [\"thickness\"]", "/facesTreated too-many")]
    [InlineData("- /facesTreated & /blockedFaces = [\"thickness\",\"thickness\"]", "/blockedFaces no-face-treated")]
    [InlineData("/blockedFaces = [\"width\"]", "/blockedFaces/0 not-for-shape")]
    [InlineData("/blockedFaces = [\"skin\"]", "/blockedFaces/0 unknown-word")]
    [InlineData("/blockedFaces = [null]", "/blockedFaces/0 required")]
    [InlineData("/shape = \"cylinder\" & /facesTreated = 1", "/facesTreated not-for-shape")]
    [InlineData("/diffusivity/value = 3e-13", "/diffusivity/value out-of-range")]
    [InlineData("/diffusivity/value = 3e-7", "/diffusivity/value out-of-range")]
    [InlineData("/diffusivity/value = 0.0003", "/diffusivity/value out-of-range")]
    [InlineData("- /diffusivity & /diffusivityAt = {\"value\":5,\"unit\":\"C\"}", "/diffusivityAt needs-other")]
    [InlineData("- /stages", "/stages required")]
    [InlineData("/stages = []", "/stages required")]
    [InlineData("/stages/0 = null", "/stages/0 required")]
    [InlineData("/stages/0/time/value = 0", "/stages/0/time/value out-of-range")]
    [InlineData("/stages/0/time/value = -1", "/stages/0/time/value out-of-range")]
    [InlineData("/stages/0/time/value = 0.001", "/stages out-of-range")]
    [InlineData("/stages/0/time/value = 9000", "/stages/0/time/value out-of-range")]
    [InlineData("/stages/1 = {\"temperature\":{\"value\":5,\"unit\":\"C\"},\"time\":{\"value\":8750,\"unit\":\"h\"}}", "/stages out-of-range")]
    [InlineData("/stages/0/temperature/value = -1", "/stages/0/temperature/value out-of-range")]
    [InlineData("/stages/0/temperature/value = 101", "/stages/0/temperature/value out-of-range")]
    [InlineData("- /stages/0/time", "/stages/0/time required")]
    [InlineData("/species = \"unicorn\"", "/species unknown-species")]
    [InlineData("- /species & - /diffusivity", "/species required")]
    [InlineData("/species = \"beef\" & /cut = \"pork-loin\"", "/species one-or-the-other")]
    [InlineData("/method = \"marinade\"", "/method unknown-word")]
    [InlineData("- /method", "/method required")]
    [InlineData("/shape = \"ball\"", "/shape unknown-word")]
    [InlineData("- /shape", "/shape required")]
    [InlineData("/cut = \"pork-lion\"", "/cut unknown-cut")]
    [InlineData("/method = \"soak\"", "/liquidRatio required")]
    [InlineData("/liquidRatio = 2", "/liquidRatio not-for-method")]
    [InlineData("/method = \"salt-bed\" & /liquidRatio = 2", "/liquidRatio not-for-method")]
    [InlineData("/method = \"soak\" & /liquidRatio = 0", "/liquidRatio out-of-range")]
    [InlineData("/method = \"soak\" & /liquidRatio = 1e6", "/liquidRatio out-of-range")]
    [InlineData("/shape = \"brick\"", "/length required|/width required")]
    [InlineData("/width = {\"value\":5,\"unit\":\"cm\"}", "/width not-for-shape")]
    [InlineData("/weight = {\"value\":100,\"unit\":\"g\"}", "/thickness thicker-than-piece")]
    [InlineData("/cut = \"pork-loin\" & /shape = \"cylinder\" & /weight = {\"value\":95,\"unit\":\"g\"}", "/thickness thicker-than-piece")]
    [InlineData("/shape = \"brick\" & /width = {\"value\":20,\"unit\":\"cm\"} & /length = {\"value\":20,\"unit\":\"cm\"} & /weight = {\"value\":1,\"unit\":\"kg\"}", "/thickness thicker-than-piece")]
    [InlineData("/cut = \"pork-shoulder\" & /shape = \"brick\" & /weight = {\"value\":1,\"unit\":\"t\"}", "/weight/unit unknown-unit")]
    public void What_makes_no_sense_is_refused_at_its_place(string edits, string faults) =>
        Assert.Equal(faults.Split('|'), Salting.Faults(Salting.Slab, edits));

    [Theory]
    [InlineData("/weight = {\"value\":140,\"unit\":\"g\"}")]
    [InlineData("/shape = \"cylinder\" & /cut = \"pork-loin\" & /weight = {\"value\":110,\"unit\":\"g\"}")]
    [InlineData("/shape = \"brick\" & /width = {\"value\":20,\"unit\":\"cm\"} & /length = {\"value\":20,\"unit\":\"cm\"} & /weight = {\"value\":1.2,\"unit\":\"kg\"}")]
    public void A_piece_just_heavy_enough_for_its_thickness_is_answered(string edits) => Assert.Empty(Salting.Faults(Salting.Slab, edits));

    [Theory]
    [InlineData("")]
    [InlineData(" & /shape = \"brick\" & /thickness = {\"value\":50,\"unit\":\"mm\"}")]
    [InlineData(" & /shape = \"slab\"")]
    public void Of_a_cut_that_is_not_known_nothing_else_is_said(string more) =>
        Assert.Equal(["/cut unknown-cut"], Salting.Faults(Salting.Shoulder, "/cut = \"pork-shouder\"" + more));

    [Fact]
    public void A_weight_whose_piece_is_too_small_to_compute_is_refused() =>
        Assert.Equal(["/weight out-of-range"], Salting.Faults(Salting.Shoulder, "/weight = {\"value\":2,\"unit\":\"mg\"}"));

    [Fact]
    public void Every_broken_rule_is_told_at_once() => Assert.Equal(
        ["/facesTreated out-of-range", "/liquidRatio required", "/shape unknown-word", "/species unknown-species", "/stages/0/time/value out-of-range", "/thickness/value out-of-range"],
        Salting.Faults(Salting.Pork, "/method = \"soak\" & /shape = \"ball\" & /thickness/value = 0 & /facesTreated = 3 & /species = \"unicorn\" & /stages/0/time/value = 0"));

    [Fact]
    public void Fifty_one_stages_are_too_many()
    {
        const string stage = """{"temperature":{"value":5,"unit":"C"},"time":{"value":1,"unit":"h"}}""";
        Assert.Equal(["/stages too-many"], Salting.Faults(Salting.Slab, $"/stages = [{string.Join(',', Enumerable.Repeat(stage, 51))}]"));
        Assert.Empty(Salting.Faults(Salting.Slab, $"/stages = [{string.Join(',', Enumerable.Repeat(stage, 50))}]"));
    }
}
