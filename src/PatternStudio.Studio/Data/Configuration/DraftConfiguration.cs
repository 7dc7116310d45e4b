using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class DraftConfiguration : IEntityTypeConfiguration<Draft>
{
    public void Configure(EntityTypeBuilder<Draft> draft)
    {
        draft.ToTable("Drafts");
        draft.HasKey(it => new { it.DesignId, it.AccountId, it.Writer });
        draft.Property(it => it.Place).HasMaxLength(Draft.PlaceLength);
        draft.HasOne<Design>().WithMany().HasForeignKey(it => it.DesignId).OnDelete(DeleteBehavior.Cascade);
        // Nobody else may read them: they go with the account.
        draft.HasOne<Account>().WithMany().HasForeignKey(it => it.AccountId).OnDelete(DeleteBehavior.Cascade);
    }
}
