namespace Hypocaust.Design.Source;

/// <summary>Finds members that stand twice in one object; JSON itself lets the last one win unseen.</summary>
internal static class DuplicateKeys
{
    public static void Report(SourceNode node, Place place, SourceText source, ProblemList problems)
    {
        for (var i = 0; i < node.Items.Count; i++)
        {
            Report(node.Items[i], place.Item(i), source, problems);
        }

        var first = new Dictionary<string, SourceMember>(StringComparer.Ordinal);
        foreach (var member in node.Members)
        {
            var at = place.Member(member.Name);
            if (!first.TryAdd(member.Name, member))
            {
                problems.Add(
                    DesignProblems.DuplicateKey(
                        member.Name,
                        source.PositionOf(first[member.Name].NameStart)
                    ) with
                    {
                        Place = problems.IsFull ? "$" : at.ToString(),
                        Position = source.PositionOf(member.NameStart),
                    }
                );
            }

            Report(member.Value, at, source, problems);
        }
    }
}
